import { repsOf, type Ordered } from "../schemes/compose";
import { plainIn } from "../source/words";
import type { Word } from "../types";
import { ASIDE, BEGINS } from "./assembly";

/** A set of as many reps as the one before: "ten, and then another ten", "I did twelve, then twelve again". */

/** "Nine, seven, six and six": the last two are two sets where those before were falling. */
const IN_A_ROW = /^(?:and|then|and then)$/;
const ANOTHER = /(?:^| )(?:another|again|second (?:set|one)|same)(?: \w+){0,2}$/;
const AGAIN = /^(?:more|again|as well|too)(?: |$)/;
/** The other side is no other set. */
const SIDE = /(?:^| )(?:sides?|left|right|leg|arm|hand|each|other|way|direction|per)(?: |$)/;
/** So many words are between the two. */
const NEAR = 10;

/**
 * The places of figures, where reps told again begin a set of their own.
 * @param own - of one exercise, in order; @param places - as they were heard
 */
export function toldAgain(own: readonly Ordered[], places: readonly number[], words: readonly Word[]): number[] {
  // A number of sets counts them already, and what is done without a weight is counted as it is done.
  const isCounted = own.some(({ says, about }, at) => about !== "ramp-up" && places[at] !== ASIDE && (says.sets ?? 1) > 1);
  const isWeighted = own.some(({ says }) => typeof says.load?.value === "number");
  if (isCounted || !isWeighted || own.some(({ says }) => says.eachSide === true)) return [...places];
  return places.map((place, at) => {
    const statement = own[at] as Ordered;
    const reps = repsOf(statement);
    const last = own[at - 1];
    if (place === BEGINS || place === ASIDE || reps === undefined || !last || repsOf(last) !== reps || statement.from - last.to > NEAR) return place;
    const between = plainIn(words, last.to + 1, statement.from).join(" ");
    const behind = plainIn(words, statement.to + 1, statement.to + 3).join(" ");
    const falls = own.slice(0, at - 1).map(repsOf).findLast((other) => other !== undefined);
    const isAgain = (ANOTHER.test(between) || AGAIN.test(behind) || (IN_A_ROW.test(between) && falls !== undefined && falls > reps)) && !SIDE.test(`${between} ${behind}`);
    return isAgain ? BEGINS : place;
  });
}
