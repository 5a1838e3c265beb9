import { hasWork, isSeveral, type Ordered } from "../schemes/compose";
import { plainIn } from "../source/words";
import type { Word } from "../types";
import { ASIDE, BEGINS, GOES_ON } from "./assembly";

/** Several sets with as many reps, told with the weights they were done with: "three sets of twelve, the first with eight, second and third with ten". */

/** So many words around a weight its sets may be told. */
const [BEFORE, BEHIND] = [9, 6];
const FIRST = /(?:^| )(?:the )?first (?:set|one|round|go|time)(?: |$)/;
const LAST = /(?:^| )(?:the )?(?:last|final) (?:set|one|round|go|time)(?: |$)/;
/** "For the other two", "second and third". */
const OTHERS = /(?:^| )(?:second and (?:the )?third|(?:other|next|last|following) (?:two|three|2|3)|rest of them|others)(?: |$)/;

/** Figures with their places in the set lines. */
export interface Told {
  readonly own: readonly Ordered[];
  readonly places: readonly number[];
}

const isLoad = ({ says, about }: Ordered): boolean => about === "working" && typeof says.load?.value === "number";

/** The words by a weight, up to the figures beside it. */
function around(own: readonly Ordered[], at: number, words: readonly Word[]): string {
  const { from, to } = own[at] as Ordered;
  const [last, next] = [own[at - 1]?.to ?? -1, own[at + 1]?.from ?? words.length];
  return `${plainIn(words, Math.max(last + 1, from - BEFORE), from).join(" ")} ~ ${plainIn(words, to + 1, Math.min(next, to + 1 + BEHIND)).join(" ")}`;
}

/**
 * The figures and their places, where two weights share a number of sets that was told once.
 * @param own - of one exercise, in order; @param places - as they were heard
 */
export function weightsInTurn(own: readonly Ordered[], places: readonly number[], words: readonly Word[]): Told {
  const plans = own.flatMap((statement, at) => (isSeveral(statement) && places[at] !== ASIDE ? [at] : []));
  const loads = own.flatMap((statement, at) => (isLoad(statement) && places[at] !== ASIDE ? [at] : []));
  const work = own.filter(({ says, about }, at) => about === "working" && places[at] !== ASIDE && hasWork(says));
  const [plan, first, second] = [plans[0], loads[0], loads[1]];
  const sets = own[plan ?? -1]?.says.sets ?? 0;
  const isPlain = plans.length === 1 && loads.length === 2 && new Set(work.map(({ says }) => says.repsMin)).size === 1 && work[0]?.says.repsMin !== undefined;
  if (!isPlain || plan === undefined || first === undefined || second === undefined || own[first]?.says.load?.value === own[second]?.says.load?.value) return { own, places };
  const [one, other] = [around(own, first, words), around(own, second, words)];
  const isFirst = FIRST.test(one) || OTHERS.test(other);
  const isLast = !isFirst && LAST.test(other);
  if (!isFirst && !isLast) return { own, places };
  const counts = isFirst ? [1, sets - 1] : [sets - 1, 1];
  const withSets = (statement: Ordered, count: number): Ordered => ({ ...statement, says: { ...statement.says, sets: count } });
  return {
    own: own.map((statement, at) => (at === first ? withSets(statement, counts[0] ?? 1) : at === second ? withSets(statement, counts[1] ?? 1) : statement)),
    places: places.map((place, at) => (at === plan ? ASIDE : at === second ? BEGINS : at === first && at > plan && own.slice(0, first).some((each) => work.includes(each)) ? GOES_ON : place)),
  };
}
