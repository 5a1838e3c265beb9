/** Joins sets, rests and shots into one plan of the session: which camera mark films which set. */
import { memoOn, type Block, type Episode } from "../episode";
import { isSameStation } from "../exercises";
import { marksOf, MOVE_SECONDS, planCoverage, setupOf, type CoverageBlock, type CoveragePlan, type CoverageProblem, type CoverageSet } from "../filming";
import { ASSUMED, stationOf } from "../training";
import { KIND_OF_ROLE, setsToShoot } from "./sets";
import type { ShootBlock, ShootMove, ShootPlan, ShootSet } from "./types";
import { wantsToShoot, type BothWants } from "./wants";
import { whyLost } from "./why-lost";

export * from "./types";
export { remedyIn } from "./remedy";
export { wantName } from "./wants";

/** A camera is started before a set and stopped after it; seconds. Common practice, no source. */
const HANDLE_SECONDS = 4;

const planSet = ({ id, role, workSeconds, restSeconds }: ShootSet): CoverageSet => ({ id, kind: KIND_OF_ROLE[role], seconds: workSeconds, restSeconds });

interface Asked {
  readonly sets: readonly ShootSet[];
  readonly wants: readonly BothWants[];
  readonly problem: CoverageBlock;
}

const asking = (cameras: 1 | 2) => memoOn((block: Block): Asked => {
  const sets = setsToShoot(block, cameras);
  const wants = wantsToShoot(block, sets);
  return { sets, wants, problem: { id: block.id, station: stationOf(block), changeSeconds: ASSUMED.changeOfStation, sets: sets.map(planSet), wants: wants.map(({ planned }) => planned) } };
});
const [askedOfOne, askedOfTwo] = [asking(1), asking(2)];
const asked = (block: Block, cameras: 1 | 2): Asked => (cameras === 2 ? askedOfTwo : askedOfOne)(block);

const camerasOf = (episode: Pick<Episode, "session">): 1 | 2 => (episode.session.cameras === 2 ? 2 : 1);

const extras = (cameras: 1 | 2) => memoOn((block: Block): number => planCoverage({ cameras, moveSeconds: MOVE_SECONDS, blocks: [asked(block, cameras).problem] }).extraSeconds);
const [extraOfOne, extraOfTwo] = [extras(1), extras(2)];

/** Floor seconds the camera moves of a block take beyond its rests. The same function for the same number of cameras, so that answers by it are remembered. */
export const moveSecondsOf = (episode: Pick<Episode, "session">): ((block: Block) => number) => (camerasOf(episode) === 2 ? extraOfTwo : extraOfOne);

/** Who walks where before which set. */
function movesOf(sets: readonly ShootSet[], stands: CoveragePlan["stands"], cameras: number): ShootMove[] {
  const at = (camera: number, set: ShootSet | undefined): string | null => stands.find((stand) => stand.camera === camera && stand.set === set?.id)?.mark ?? null;
  return sets.slice(1).flatMap((set, i) => {
    const before = sets[i];
    const walks = Array.from({ length: cameras }, (_, camera) => ({ camera: camera + 1, from: at(camera + 1, before), to: at(camera + 1, set) }))
      .flatMap(({ camera, from, to }) => (to === null || from === to ? [] : [{ camera, before: set.id, from, to, seconds: MOVE_SECONDS }]));
    const fits = walks.length * MOVE_SECONDS <= (before?.restSeconds ?? 0);
    return walks.map((walk) => ({ ...walk, fits }));
  });
}

/** Every set a camera films something in is recorded whole, and every shot at least as long as it is wanted. */
function recorded(sets: readonly ShootSet[], wants: readonly BothWants[], shots: CoveragePlan["shots"]): number {
  const runs = new Map<string, number>();
  for (const { want, set, camera } of shots) {
    const key = `${camera} ${set}`;
    runs.set(key, (runs.get(key) ?? 0) + (wants.find(({ shown }) => shown.id === want)?.shown.seconds ?? 0));
  }
  return [...runs].reduce((sum, [key, seconds]) => {
    const set = sets.find(({ id }) => key.endsWith(` ${id}`));
    return sum + HANDLE_SECONDS + Math.max(seconds, set?.role === "run" ? 0 : (set?.workSeconds ?? 0));
  }, 0);
}

/**
 * Which mark films which set, for the whole session: the exact plan of `planCoverage` over the sets as they are planned and the shots as they are written.
 *
 * A shot that names its sets is filmed there or lost; others go where they cost least. Blocks without sets are run through once for each
 * mark. Remembered for as long as the episode is the same object.
 */
export const shootPlan = memoOn((episode: Episode): ShootPlan => {
  const cameras = camerasOf(episode);
  const parts = episode.blocks.map((block) => ({ block, ...asked(block, cameras) }));
  const problem: CoverageProblem = { cameras, moveSeconds: MOVE_SECONDS, blocks: parts.map((part) => part.problem) };
  const plan = planCoverage(problem);
  const lost = new Set(plan.lost);
  let left: { readonly station: string; readonly marks: ReadonlyMap<number, string> } = { station: "", marks: new Map() };

  const blocks = parts.map(({ block, sets, wants, problem: { station } }): ShootBlock => {
    const ids = new Set(sets.map(({ id }) => id));
    const stands = plan.stands.filter(({ set }) => ids.has(set));
    const shots = plan.shots.filter(({ set }) => ids.has(set));
    const marks = marksOf(block, setupOf(episode, block));
    const moves = movesOf(sets, stands, cameras);
    const first = stands.filter(({ set }) => set === sets[0]?.id);
    const isSame = isSameStation(station, left.station);
    const kept = isSame ? first.filter(({ camera, mark }) => left.marks.get(camera) === mark).map(({ camera, mark }) => ({ camera, mark })) : [];
    if (stands.length > 0) left = { station, marks: new Map(stands.filter(({ set }) => set === sets.at(-1)?.id).map(({ camera, mark }) => [camera, mark])) };
    return {
      block, station, sets, wants: wants.map(({ shown }) => shown), marks, stands, shots, moves, kept,
      lost: wants.filter(({ shown }) => lost.has(shown.id)).map((want) => whyLost(want, sets, marks, stands)),
      extraSeconds: moveSecondsOf(episode)(block), recordedSeconds: recorded(sets, wants, shots),
    };
  });
  return { problem, plan, blocks, moves: plan.moves, extraSeconds: plan.extraSeconds, lost: plan.lost, recordedMinutes: blocks.reduce((sum, { recordedSeconds }) => sum + recordedSeconds, 0) / 60 };
});
