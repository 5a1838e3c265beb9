import { homeOf, type Scene } from "../owners/scene";
import { plainIn } from "../source/words";
import type { Ordered } from "./compose";

/** A number of sets that was told of another exercise: "just two sets of this one". */

const OF_ONE = /^(?:(?:sets?|lots?|rounds?) )?of (?:this|these|those|that)(?: |$)/;
/** So few words are between the sets and the reps of one exercise: "three lots of six". */
const BESIDE = 4;

/** Is a number of sets told of one exercise alone, in its own time? */
export function isOfOne({ exercises, statements, words }: Scene, { from, to }: Ordered): boolean {
  if (homeOf(exercises, from) < 0) return false;
  const isBeside = statements.some(({ says, from: next }) => says.repsMin !== undefined && next > to && next <= to + BESIDE);
  return isBeside || OF_ONE.test(plainIn(words, to + 1, to + BESIDE).join(" "));
}
