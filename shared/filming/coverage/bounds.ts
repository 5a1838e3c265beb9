import { ANY_SET, bitOf, PATTERNS } from "./demand";
import type { CoverageSet } from "./types";

/** What is filmed in which order and where the rests are, as numbers. */
export interface Floor {
  readonly cameras: number;
  /** Kind of each set, as a bit. */
  readonly sets: readonly number[];
  /** Extra microseconds of 0, 1, 2 moves in the rest after each set but the last. */
  readonly rests: readonly (readonly number[])[];
}

export const restCosts = (cameras: number, moveMicros: number, restMicros: number): number[] =>
  Array.from({ length: cameras + 1 }, (_, moves) => Math.max(0, moves * moveMicros - restMicros));

export const floorOf = (cameras: number, sets: readonly CoverageSet[], restMicros: readonly number[], moveMicros: number): Floor => ({
  cameras,
  sets: sets.map(({ kind }) => bitOf(kind)),
  rests: restMicros.slice(0, -1).map((rest) => restCosts(cameras, moveMicros, rest)),
});

/**
 * Least cost of so many arrivals, in the rests from a set on up to a last one.
 * A rest's second move never costs less than its first, so the cheapest single moves add up to a cost that nothing can undercut.
 */
function arrivalCosts(floor: Floor, last: number): number[][] {
  const byStart: number[][] = [];
  let single: number[] = [];
  for (let start = floor.sets.length - 1; start >= 0; start--) {
    if (start < last) {
      const costs = floor.rests[start] ?? [];
      single = [...single, ...costs.slice(1).map((cost, i) => cost - (costs[i] ?? 0))].sort((a, b) => a - b);
    }
    let sum = 0;
    byStart[start] = [0, ...single.map((cost) => (sum += cost))];
  }
  return byStart;
}

export interface Bounds {
  /**
   * Least extra microseconds from the moment the cameras stand for a set; Infinity when something would be left unfilmed.
   * @param counts - marks without a camera, by pattern; @param standing - patterns under the cameras
   */
  readonly leastCost: (set: number, counts: readonly number[], standing: readonly number[]) => number;
}

/** Every mark without a camera needs an arrival, and before the last set of each kind it still asks for. */
export function boundsOf(floor: Floor): Bounds {
  const bits = [1, 2, 4];
  const lastOf = bits.map((bit) => floor.sets.lastIndexOf(bit));
  const costs = lastOf.map((last) => arrivalCosts(floor, last));
  const allCosts = arrivalCosts(floor, floor.sets.length - 1);
  const placesFrom = bits.map((bit) => floor.sets.map((_, start) => floor.cameras * floor.sets.slice(start).filter((kind) => kind === bit).length));

  return {
    leastCost(set, counts, standing) {
      let needed = 0;
      let cost = 0;
      for (let k = 0; k < bits.length; k++) {
        const bit = bits[k] ?? 0;
        let away = 0;
        for (let pattern = 1; pattern < ANY_SET; pattern++) if (pattern & bit) away += counts[pattern] ?? 0;
        let here = 0;
        for (const pattern of standing) if (pattern < ANY_SET && pattern & bit) here++;
        if (away + here > (placesFrom[k]?.[set] ?? 0)) return Infinity;
        needed += away + here;
        const arrivals = costs[k]?.[set]?.[away];
        if (arrivals === undefined) return Infinity;
        cost = Math.max(cost, arrivals);
      }
      let away = 0;
      for (let pattern = 1; pattern < PATTERNS; pattern++) away += counts[pattern] ?? 0;
      needed += counts[ANY_SET] ?? 0;
      for (const pattern of standing) if (pattern === ANY_SET) needed++;
      if (needed > floor.cameras * (floor.sets.length - set)) return Infinity;
      return Math.max(cost, allCosts[set]?.[away] ?? Infinity);
    },
  };
}
