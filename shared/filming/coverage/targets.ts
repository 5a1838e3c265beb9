import { ANY_SET, bitOf, compareWorth, DONE, NOTHING, plus, worthOf, type MarkDemand, type Pattern, type Worth } from "./demand";
import { SET_KINDS } from "./types";

/** How many camera places there are: one for each set and camera, by the kind of the set. */
export type Places = Readonly<Record<(typeof SET_KINDS)[number], number>>;

/** A pattern for each mark, in the order of the marks. */
export type Target = readonly Pattern[];

interface Partial {
  readonly target: Target;
  readonly worth: Worth;
  /** Marks taken so far per pattern. */
  readonly counts: readonly number[];
  /** The patterns of marks that cameras already stand at. */
  readonly own: string;
}

const isWorth = ({ musts, weight }: Worth): boolean => musts > 0 || weight > 0n;

/** The ways to film a mark, most first. Filming what is worth nothing is no aim. */
function waysOf(demand: MarkDemand, places: Places): Pattern[] {
  const asked = SET_KINDS.filter((kind) => places[kind] > 0 && isWorth(demand.kinds[kind])).reduce((bits, kind) => bits | bitOf(kind), 0);
  const subsets: Pattern[] = [];
  for (let subset = asked; subset > 0; subset = (subset - 1) & asked) subsets.push(subset);
  return [...subsets, ...(isWorth(demand.any) ? [ANY_SET] : []), DONE];
}

/** Any camera may stand at any mark in any set, so what can be filmed at all is a matter of counting places. */
function fits(counts: readonly number[], places: Places): boolean {
  let left = 0;
  for (const kind of SET_KINDS) {
    const needed = counts.reduce((sum, count, pattern) => (pattern !== ANY_SET && pattern & bitOf(kind) ? sum + count : sum), 0);
    if (needed > places[kind]) return false;
    left += places[kind] - needed;
  }
  return (counts[ANY_SET] ?? 0) <= left;
}

/**
 * Everything that is worth most: musts, then weight.
 *
 * Marks with the same pattern are alike for the cameras, so of all choices with as many marks of each pattern one is kept,
 * the one that is worth most, and among equals the one that takes the earlier marks.
 * @param standing - marks that are like no other, because cameras already stand there
 * @returns one target for each mixture of patterns that reaches the best worth
 */
export function bestTargets(demands: readonly MarkDemand[], places: Places, standing: readonly (string | null)[]): readonly Target[] {
  let open: Map<string, Partial> = new Map([["", { target: [], worth: NOTHING, counts: new Array<number>(ANY_SET + 1).fill(0), own: "" }]]);
  const ways = demands.map((demand) => waysOf(demand, places));
  // Often everything fits; then there is nothing to choose.
  const all = ways.map(([most = DONE]) => most);
  const counts = new Array<number>(ANY_SET + 1).fill(0);
  for (const pattern of all) if (pattern !== DONE) counts[pattern] = (counts[pattern] ?? 0) + 1;
  if (fits(counts, places)) return [all];

  demands.forEach((demand, i) => {
    const next = new Map<string, Partial>();
    for (const partial of open.values()) {
      for (const pattern of ways[i] ?? []) {
        const counts = [...partial.counts];
        if (pattern !== DONE) counts[pattern] = (counts[pattern] ?? 0) + 1;
        if (!fits(counts, places)) continue;
        const worth = plus(partial.worth, worthOf(demand, pattern));
        const own = standing.includes(demand.mark) ? `${partial.own} ${pattern}` : partial.own;
        const key = `${counts.join(" ")}|${own}`;
        const known = next.get(key);
        if (!known || compareWorth(worth, known.worth) > 0) next.set(key, { target: [...partial.target, pattern], worth, counts, own });
      }
    }
    open = next;
  });
  const best = [...open.values()].reduce((most, { worth }) => (compareWorth(worth, most) > 0 ? worth : most), NOTHING);
  return [...open.values()].filter(({ worth }) => compareWorth(worth, best) === 0).map(({ target }) => target);
}
