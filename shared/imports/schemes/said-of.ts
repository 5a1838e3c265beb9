import type { Mention } from "../names/find";
import type { Scene } from "../owners/scene";
import { isNamed } from "../owners/turned";
import { plainIn } from "../source/words";

/** Figures that name their exercise: whatever is heard around them, they hold for this one. */

/** Words between a figure and the exercise it is said of: "the twelves for the hammer curls", "four sets of face pulls". */
const OF_NAME = /^(?:(?:kilos?|kgs?|pounds?|lbs?|reps?|repetitions?|sets?|rounds?) )?(?:for|on|of)(?: (?:the|my|your|our|those|these))?$/;

/** So many words behind a figure its exercise may be named. */
const REACH = 4;

/** Between the names of a list. */
const LIST = /^(?:(?:and|or|the|then|my|your)(?: |$))*$/;

/** The one exercise that a figure is said of by its name right behind it; null where there is none. */
export function saidOf({ exercises, statements, words }: Scene, at: number, mentions: readonly Mention[]): number[] | null {
  const to = (statements[at]?.to ?? words.length) + 1;
  const mention = mentions.find(({ from }) => from >= to && from < to + REACH);
  const between = (from: number, until: number): string => plainIn(words, from, until).join(" ");
  // "On the bench" is where most things are done.
  if (!mention || mention.name.letters === "bench" || !OF_NAME.test(between(to, mention.from))) return null;
  const next = mentions.find(({ from }) => from >= mention.to);
  if (next && LIST.test(between(mention.to, next.from))) return null;
  const places = exercises.flatMap((exercise, place) => (isNamed(mention, exercise) ? [place] : []));
  return places.length === 1 ? places : null;
}
