import { plainIn } from "../source/words";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** "One hold, as long as you can, I got fifty-five seconds": what it came to is the set. */

const LONG = /(?:^| )as long as (?:possible|you can|you could|i can|i could|you like)(?: |$)/;
/** So many words behind it the time is told. */
const NEAR = 14;

/** The figures without "as long as you can" where the time it came to is told. @param own - of one exercise, in order */
export function heldFor(own: readonly Ordered[], words: readonly Word[]): readonly Ordered[] {
  return own.filter(({ says, from, to }) => !(says.amrap === true && LONG.test(plainIn(words, from - 2, to + 7).join(" ")) && own.some((other) => other.says.seconds !== undefined && other.from > to && other.from <= to + NEAR)));
}
