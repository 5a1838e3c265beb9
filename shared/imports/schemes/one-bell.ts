import { plainIn } from "../source/words";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** One weight is held: "with a sixteen-kilo kettlebell". */

const ONE = /^(?:a|an|one|single|this|that|the one|just one)$/;
const BELL = /^(?:(?:kilos?|kgs?|kilograms?|pounds?|lbs?) )?(?:kettlebell|dumbbell|bell|plate)(?: |$)/;
const TWO = /(?:^| )(?:each|both|pair|two|hands|either)(?: |$)/;
/** So many words around are looked at for a second one. */
const NEAR = 10;

/** Is it told that one weight is held, and no word speaks of a second? */
export const isOneBell = (own: readonly Ordered[], words: readonly Word[]): boolean =>
  own.some(({ says, from, to }) => typeof says.load?.value === "number" && says.load.perHand !== true
    && ONE.test(words[from - 1]?.plain ?? "") && BELL.test(plainIn(words, to + 1, to + 4).join(" ").replace(/^[\w.]+ (?=(?:kilo|pound))/, "")) && !TWO.test(plainIn(words, from - NEAR, to + NEAR).join(" ")));
