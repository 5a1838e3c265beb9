import { positive } from "./positive";
import { roundLoad, tidy } from "./round-load";

export interface Increase {
  /** The smallest and largest raise in common recommendation, same unit as the load. */
  readonly min: number;
  readonly max: number;
  /** The loads inside that can be made; empty when every step is too large. */
  readonly loads: readonly number[];
}

const SMALLEST = 0.02;
const LARGEST = 0.1;

/**
 * Where the next load may lie: 2 to 10 percent above this one.
 * @param step - the steps the gym has, kg or lb
 * @throws {RangeError} when load or step is not positive
 * @source ACSM, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 41(3):687-708, 2009
 */
export function increase(load: number, step = 2.5): Increase {
  positive(load, "A load");
  const min = tidy(load * (1 + SMALLEST));
  const max = tidy(load * (1 + LARGEST));
  const loads: number[] = [];
  for (let next = roundLoad(min, step); next <= max; next = tidy(next + step)) if (next >= min) loads.push(next);
  return { min, max, loads };
}

/**
 * The 2-for-2 rule: raise the load when the last set went two reps or more beyond the goal in two sessions running.
 * @param lastSets - reps of the last set of each session, oldest first; the two newest decide
 * @source Essentials of Strength Training and Conditioning (NSCA)
 */
export function twoForTwo(goal: number, lastSets: readonly number[]): "raise" | "keep" {
  const newest = lastSets.slice(-2);
  return newest.length === 2 && newest.every((reps) => reps >= goal + 2) ? "raise" : "keep";
}
