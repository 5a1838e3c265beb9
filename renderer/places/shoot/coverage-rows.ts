import type { Mark, Shot } from "../../../shared/filming";
import type { ShootBlock, ShootSet } from "../../../shared/shoot-plan";
import { clock } from "../../words/clock";
import { listed } from "../../words/count";

/** What one camera does at a mark during a set. */
export interface CoverageCell {
  /** Cameras that stand here, from 1. */
  readonly cameras: readonly number[];
  /** What they film here for the first time. */
  readonly shots: readonly Shot[];
}

/** One row of a block's coverage: a set, and each mark's part in it. */
export interface CoverageRow {
  readonly set: ShootSet;
  /** "8 to 10 reps, 22 kg each hand" */
  readonly work: string;
  /** One a mark, in the order of the marks. */
  readonly cells: readonly CoverageCell[];
  /** What is carried before the set, and whether the rest holds it; null when all stay. */
  readonly move: { readonly words: string; readonly fits: boolean } | null;
}

/** "Camera to B: 45 s of the 90 s rest." */
function moveBefore({ moves, marks, sets }: ShootBlock, at: number, cameras: number): CoverageRow["move"] {
  const set = sets[at];
  const now = moves.filter(({ before }) => before === set?.id);
  const [first] = now;
  if (!first) return null;
  const letter = (key: string): string => marks.find((mark) => mark.key === key)?.letter ?? key;
  const taken = now.reduce((sum, { seconds }) => sum + seconds, 0);
  const rest = sets[at - 1]?.restSeconds ?? 0;
  const who = listed(now.map(({ camera, to }) => `${cameras > 1 ? `camera ${camera}` : "camera"} to ${letter(to)}`));
  const words = `${who.charAt(0).toUpperCase()}${who.slice(1)}: ${taken} s`;
  // Between the runs of a block without sets, and after a demonstration, nobody rests.
  const isRest = sets[at - 1]?.role === "working" || sets[at - 1]?.role === "ramp-up";
  if (first.fits) return { fits: true, words: isRest ? `${words} of the ${rest} s rest.` : `${words}.` };
  return { fits: false, words: `${words}, ${isRest ? `and the rest is ${rest} s` : `and there are ${rest} s before it`}: costs ${clock(taken - rest)}.` };
}

/** Which mark films which set, set by set. */
export function coverageRows(shoot: ShootBlock, cameras: number): CoverageRow[] {
  const cell = (mark: Mark, set: ShootSet): CoverageCell => ({
    cameras: shoot.stands.filter((stand) => stand.set === set.id && stand.mark === mark.key).map(({ camera }) => camera),
    shots: shoot.shots.filter((shot) => shot.set === set.id).flatMap(({ want }) => shoot.wants.filter(({ id, mark: key }) => id === want && key === mark.key).map(({ shot }) => shot)),
  });
  return shoot.sets.map((set, at) => ({ set, work: [set.work, set.load].filter(Boolean).join(", "), cells: shoot.marks.map((mark) => cell(mark, set)), move: moveBefore(shoot, at, cameras) }));
}
