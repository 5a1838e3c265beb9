import type { Mention } from "../names/find";
import { homeOf, type Scene } from "../owners/scene";
import { isNamed } from "../owners/turned";
import type { Scheme } from "../../training";

/** A session that is told as a list before it is done: "hip thrusts four sets of eight, split squats three sets of ten". */

/** So many words behind a name, or behind the figure before, a figure is still said of it. */
const NEAR = 7;
/** Fewer exercises with figures are no list. */
const FEWEST = 3;
/** What such a list tells; a rest at its end is for more than the last. */
const TOLD: readonly (keyof Scheme)[] = ["sets", "repsMin", "seconds", "meters", "load", "eachSide", "amrap"];

/** The figures of a list told before the first exercise, each with the number of the exercise it is said of; empty where there is none. */
export function listedFirst({ exercises, statements }: Scene, mentions: readonly Mention[]): ReadonlyMap<number, number> {
  const first = exercises[0]?.turn ?? 0;
  const early = mentions.filter(({ from }) => from < first);
  const out = new Map<number, number>();
  let [place, reach] = [-1, -1];
  let last = -1;
  statements.forEach(({ says, from, to, about }, at) => {
    if (homeOf(exercises, from) >= 0) return;
    const mention = early.findLast((each) => each.to <= from);
    if (mention && mention.from > last) {
      const named = exercises.flatMap((exercise, number) => (isNamed(mention, exercise) ? [number] : []));
      [place, reach, last] = [named.length === 1 ? (named[0] ?? -1) : -1, mention.to, mention.from];
    }
    if (place < 0 || from - reach > NEAR || about === "ramp-up" || !TOLD.some((field) => says[field] !== undefined)) {
      place = -1;
      return;
    }
    out.set(at, place);
    reach = to;
  });
  const told = [...new Set(out.values())];
  const inOrder = told.every((number, at) => at === 0 || number > (told[at - 1] ?? -1));
  return told.length >= FEWEST && inOrder ? out : new Map();
}
