import { tidy } from "./round-load";

/** A plate the gym has, as often as wanted or in so many pairs. */
export type PlateStock = number | { readonly weight: number; readonly pairs: number };

/** Everyday gym sets. @source Common practice, no source */
export const METRIC_PLATES: readonly PlateStock[] = [25, 20, 15, 10, 5, 2.5, 1.25];
export const IMPERIAL_PLATES: readonly PlateStock[] = [45, 35, 25, 10, 5, 2.5];
/** @source IWF Technical and Competition Rules & Regulations, 2020 (second-hand): discs */
export const COMPETITION_PLATES: readonly PlateStock[] = [25, 20, 15, 10, 5, 2.5, 2, 1.5, 1, 0.5];

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/**
 * The fewest plates for one side of the bar, heaviest first; among equals the one with the heavier plates. Null when
 * the total cannot be loaded exactly. Weights are one unit throughout, taken to a thousandth.
 *
 * Largest-first is not always fewest (60 lb a side is 35 + 25, not 45 + 10 + 5), so the count is exact.
 * @param collars - the weight of both collars together
 */
export function platesPerSide(total: number, bar: number, collars: number, plates: readonly PlateStock[]): number[] | null {
  const side = Math.round(((total - bar - collars) / 2) * 1000);
  if (!Number.isFinite(side) || side < 0) return null;
  const stock = plates
    .map((plate) => (typeof plate === "number" ? { weight: plate, pairs: Infinity } : plate))
    .map(({ weight, pairs }) => ({ weight: Math.round(weight * 1000), pairs }))
    .filter(({ weight, pairs }) => weight > 0 && pairs > 0)
    .sort((a, b) => b.weight - a.weight);
  const unit = stock.reduce((sofar, { weight }) => commonDivisor(sofar, weight), 0);
  if (side === 0) return [];
  if (unit === 0 || side % unit !== 0) return null;
  const goal = side / unit;

  // fewest[p][w]: plates needed for weight w from plate p on; the loops fill it from the lightest plate up
  let fewest: number[] = Array.from({ length: goal + 1 }, (_, weight) => (weight === 0 ? 0 : Infinity));
  const choices: number[][] = [];
  for (const { weight, pairs } of [...stock].reverse()) {
    const size = weight / unit;
    const choice = new Array<number>(goal + 1).fill(0);
    const next = fewest.slice();
    for (let aim = size; aim <= goal; aim++) {
      for (let used = 1; used <= pairs && used * size <= aim; used++) {
        const count = used + (fewest[aim - used * size] ?? Infinity);
        if (count <= (next[aim] ?? Infinity) && count < Infinity) {
          next[aim] = count;
          choice[aim] = used;
        }
      }
    }
    fewest = next;
    choices.unshift(choice);
  }
  if (fewest[goal] === Infinity) return null;
  let left = goal;
  return stock.flatMap(({ weight }, index) => {
    const used = choices[index]?.[left] ?? 0;
    left -= (used * weight) / unit;
    return new Array<number>(used).fill(tidy(weight / 1000));
  });
}
