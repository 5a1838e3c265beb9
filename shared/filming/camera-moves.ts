import { memoOn, type Block } from "../episode";
import { markKey } from "./marks";
import { shotsOf } from "./shots";

/** Carrying the tripod to another mark, framing and locking the exposure; seconds. Common practice, no source. */
export const MOVE_SECONDS = 45;

/** One walk of the camera from a mark to the next. */
export interface CameraMove {
  /** 1-based number of the WORKING set after which the camera moves, in the rest before the next set that is filmed. */
  readonly afterSet: number;
  readonly seconds: number;
}

/**
 * The camera moves a block needs with one camera, from the working sets its shots name.
 *
 * Sets are visited in order; the camera stays where it is while the next filmed set has a shot from there, else it goes to the mark of
 * that set's first shot. `afterSet` is the 1-based WORKING set number after which the move happens (ramp-up sets are not counted).
 * Shots that name no set, or are filmed on ramp-up sets or demonstrations, ask for no move.
 */
export const cameraMoves = memoOn((block: Block): readonly CameraMove[] => {
  const marksBySet = new Map<number, string[]>();
  for (const { shot } of shotsOf(block)) {
    if (shot.on === "ramp-up" || shot.on === "demonstration") continue;
    for (const set of shot.sets ?? []) marksBySet.set(set, [...(marksBySet.get(set) ?? []), markKey(shot)]);
  }
  const moves: CameraMove[] = [];
  let at: string | null = null;
  let lastSet = 0;
  for (const [set, marks] of [...marksBySet].sort(([a], [b]) => a - b)) {
    if (at !== null && !marks.includes(at)) moves.push({ afterSet: lastSet, seconds: MOVE_SECONDS });
    if (at === null || !marks.includes(at)) at = marks[0] ?? at;
    lastSet = set;
  }
  return moves;
});
