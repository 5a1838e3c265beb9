import { isSameStation } from "../../exercises";
import { boundsOf } from "./bounds";
import { demandsOf, DONE, MUST_LEAVE, PATTERNS, type MarkDemand, type Pattern } from "./demand";
import { fromMicros, toMicros } from "./exact";
import { floorOf, restCosts } from "./floor";
import { namedStands } from "./named";
import { standsOf } from "./place";
import { cheapestSchedule, type Begun, type Schedule } from "./schedule";
import { bestTargets, type Target } from "./targets";
import type { CoverageBlock, CoveragePlan, CoverageProblem, CoverageStand } from "./types";
import { coverageCost, shotsFrom } from "./verify";

/** The target's marks by pattern, less those a camera of a begun block already stands at. */
function countsOf(demands: readonly MarkDemand[], target: Target, begun: CoverageBlock["begun"], standing: readonly (string | null)[]): { counts: number[]; under: Pattern[] } {
  const counts = new Array<number>(PATTERNS).fill(0);
  demands.forEach(({ mark }, i) => {
    const pattern = target[i] ?? DONE;
    if (pattern !== DONE && !(begun && standing.includes(mark))) counts[pattern] = (counts[pattern] ?? 0) + 1;
  });
  const under = standing.map((mark, camera) => {
    if (mark === null) return MUST_LEAVE;
    const index = demands.findIndex((demand) => demand.mark === mark);
    return index < 0 || standing.indexOf(mark) < camera ? DONE : (target[index] ?? DONE);
  });
  return { counts, under };
}

/** Where the cameras stand in one block in which wants ask for kinds of set. */
function kindStands(cameras: number, moveMicros: number, block: CoverageBlock): CoverageStand[] {
  const demands = demandsOf(block);
  const places = { ramp: 0, working: 0, demo: 0 };
  for (const { kind } of block.sets) places[kind] += cameras;
  const floor = floorOf(cameras, block.sets, block.sets.map(({ restSeconds }) => toMicros(restSeconds)), moveMicros);
  const standing = block.begun ? Array.from({ length: cameras }, (_, camera) => block.begun?.marks[camera] ?? null) : [];

  const bounds = boundsOf(floor, demands.length + cameras);
  let best: { readonly target: Target; readonly schedule: Schedule } | null = null;
  for (const target of bestTargets(demands, places, standing)) {
    const { counts, under } = countsOf(demands, target, block.begun, standing);
    const begun: Begun | null = block.begun ? { standing: under, costs: restCosts(cameras, moveMicros, toMicros(block.begun.restSeconds)) } : null;
    const schedule = cheapestSchedule(floor, bounds, counts, begun, best?.schedule ?? { cost: Infinity, moves: Infinity });
    if (schedule) best = { target, schedule };
  }
  if (!best) throw new Error(`kindStands found no plan for block "${block.id}".`);
  return standsOf(block.sets, demands, best.target, best.schedule, block.begun ? standing : null);
}

/** Long enough for any moves: what is carried between blocks costs nothing. */
const FREE_SECONDS = 1_000_000;

/** The same plan as far as it counts, but with cameras left standing from the block before where that costs nothing. */
function keptStands(cameras: number, moveMicros: number, block: CoverageBlock, keep: readonly (string | null)[]): CoverageStand[] {
  const plain = kindStands(cameras, moveMicros, block);
  const known = keep.map((mark) => (block.wants.some((want) => want.mark === mark) ? mark : null));
  if (known.every((mark) => mark === null)) return plain;
  const kept = kindStands(cameras, moveMicros, { ...block, begun: { marks: known, restSeconds: FREE_SECONDS } });
  const worth = (stands: readonly CoverageStand[]): number[] => {
    const { moves, extraSeconds } = coverageCost({ cameras: cameras === 2 ? 2 : 1, moveSeconds: fromMicros(moveMicros), blocks: [block] }, stands);
    return [shotsFrom(block, stands).length, extraSeconds, moves];
  };
  return worth(kept).join() === worth(plain).join() ? kept : plain;
}

/** Where the cameras stand in one block; nowhere when nothing is wanted or no set is left. @param keep - marks they stand at from the block before at this station */
function blockStands(cameras: number, moveMicros: number, block: CoverageBlock, keep: readonly (string | null)[]): CoverageStand[] {
  if (block.wants.length === 0 || block.sets.length === 0) return [];
  if (block.wants.some(({ sets }) => sets !== undefined)) return namedStands(cameras, moveMicros, block, keep);
  return block.begun ? kindStands(cameras, moveMicros, block) : keptStands(cameras, moveMicros, block, keep);
}

/** Where each camera stands at the end. */
const lastMarks = (stands: readonly CoverageStand[]): string[] => {
  const set = stands.at(-1)?.set;
  return stands.filter((stand) => stand.set === set).map(({ mark }) => mark);
};

/**
 * Which mark films which set: most musts, then most weight of nice wants, then least extra seconds, then fewest moves.
 *
 * Exact: no plan is better. In two steps a block: what can be filmed at best is a matter of counting camera places (`targets.ts`),
 * and how to film that most cheaply is a search over the sets (`schedule.ts`) in which marks that ask for the same kinds of set are alike.
 * Weights are compared as they are written, seconds to the microsecond; nothing is compared in floating point.
 *
 * Wants that name their sets go to a second search, over sets and marks as they are (`named.ts`).
 *
 * Ties: cameras stay where the block before left them, when it is at the same station; marks with a must before others, then in the
 * order of the wants; the first camera before the second. Names play no part.
 * A camera without a task stands at the first mark that is free, else at the first mark. A block without wants has no stands.
 * Else stations and their changes do not enter: the first set-up in each block is free.
 */
export function planCoverage(problem: CoverageProblem): CoveragePlan {
  const moveMicros = toMicros(problem.moveSeconds);
  let last: { readonly station: string; readonly marks: readonly string[] } = { station: "", marks: [] };
  const byBlock = problem.blocks.map((block) => {
    const stands = blockStands(problem.cameras, moveMicros, block, isSameStation(block.station, last.station) ? last.marks : []);
    if (stands.length > 0) last = { station: block.station, marks: lastMarks(stands) };
    return { block, stands };
  });
  const stands = byBlock.flatMap((each) => each.stands);
  const shots = byBlock.flatMap((each) => shotsFrom(each.block, each.stands));
  const filmed = new Set(shots.map(({ want }) => want));
  const lost = problem.blocks.flatMap(({ wants }) => wants.filter(({ id }) => !filmed.has(id)).map(({ id }) => id));
  return { stands, shots, lost, ...coverageCost(problem, stands) };
}
