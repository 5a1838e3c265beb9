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

/** So few words are between the reps of a list. */
const NEXT = 6;

/** "Twenty push-ups, thirty squats": reps right before a name in the plural, beside others that are. */
function isInList({ statements, words }: Scene, at: number, mentions: readonly Mention[]): boolean {
  const isNaming = (place: number): boolean => {
    const { says, to = -1 } = statements[place] ?? {};
    const mention = mentions.find(({ from }) => from === to + 1);
    return says?.repsMin !== undefined && mention !== undefined && mention.isThing && /s$/.test(words[mention.to - 1]?.plain ?? "");
  };
  const isNear = (one: number, other: number): boolean => isNaming(one) && isNaming(other) && (statements[other]?.from ?? 0) - (statements[one]?.to ?? 0) <= NEXT;
  return isNear(at - 1, at) || isNear(at, at + 1);
}

/** The one exercise that a figure is said of by its name right behind it; null where there is none. */
export function saidOf(scene: Scene, at: number, mentions: readonly Mention[]): number[] | null {
  const { exercises, statements, words } = scene;
  const to = (statements[at]?.to ?? words.length) + 1;
  const mention = mentions.find(({ from }) => from >= to && from < to + REACH);
  const between = (from: number, until: number): string => plainIn(words, from, until).join(" ");
  const isReps = isInList(scene, at, mentions);
  // "On the bench" is where most things are done.
  if (!mention || mention.name.letters === "bench" || !(isReps || OF_NAME.test(between(to, mention.from)))) return null;
  const next = mentions.find(({ from }) => from >= mention.to);
  if (!isReps && next && LIST.test(between(mention.to, next.from))) return null;
  const places = exercises.flatMap((exercise, place) => (isNamed(mention, exercise) ? [place] : []));
  return places.length === 1 ? places : null;
}
