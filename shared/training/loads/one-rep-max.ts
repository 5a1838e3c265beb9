import { positive } from "./positive";

/** The published estimates of the one-rep max, by the name of their author. */
export const ONE_REP_MAX_FORMULAS = ["Epley", "Brzycki", "Lombardi", "O'Conner", "Mayhew", "Wathan", "Lander"] as const;
export type OneRepMaxFormula = (typeof ONE_REP_MAX_FORMULAS)[number];

/** The most reps an estimate is given for; the formulas fit best up to ten (LeSuer et al. 1997, from memory). */
export const MOST_REPS_FOR_ESTIMATE = 12;

/** One-rep max as a multiple of the load lifted for `r` reps. */
const FACTORS: Readonly<Record<OneRepMaxFormula, (r: number) => number>> = {
  Epley: (r) => 1 + r / 30,
  Brzycki: (r) => 36 / (37 - r),
  Lombardi: (r) => r ** 0.1,
  "O'Conner": (r) => 1 + 0.025 * r,
  Mayhew: (r) => 100 / (52.2 + 41.9 * Math.exp(-0.055 * r)),
  Wathan: (r) => 100 / (48.8 + 53.8 * Math.exp(-0.075 * r)),
  Lander: (r) => 100 / (101.3 - 2.67123 * r),
};

/** Five of the seven formulas miss at one rep, where the load lifted is the answer. */
function factor(formula: OneRepMaxFormula, reps: number): number {
  if (!Number.isInteger(reps) || reps < 1 || reps > MOST_REPS_FOR_ESTIMATE) {
    throw new RangeError(`Reps for an estimate are a whole number from 1 to ${MOST_REPS_FOR_ESTIMATE}, not ${reps}`);
  }
  return reps === 1 ? 1 : FACTORS[formula](reps);
}

/**
 * Estimates the most that can be lifted once. An estimate, never a prescription.
 * @param load - kg or lb; the answer has the same unit
 * @param reps - done to failure with good form, whole, 1 to 12
 * @throws {RangeError} when the load is not positive or the reps lie outside 1 to 12
 * @source Epley 1985; Brzycki, JOPERD 64(1):88-90, 1993; Lombardi 1989; O'Conner et al. 1989; Mayhew et al. 1992; Wathen 1994; Lander 1985
 */
export function oneRepMax(formula: OneRepMaxFormula, load: number, reps: number): number {
  return positive(load, "A load") * factor(formula, reps);
}

/**
 * The load that the same formula expects for `reps` reps to failure: the inverse of `oneRepMax`.
 * @throws {RangeError} as `oneRepMax` does
 */
export function loadForReps(formula: OneRepMaxFormula, max: number, reps: number): number {
  return positive(max, "A load") / factor(formula, reps);
}
