import type { Scheme } from "../types";

/** How many sets the line asks for: the minutes of an EMOM, otherwise the stated sets; one where none are stated. */
export function setCount(scheme: Scheme): number {
  return scheme.emomMinutes ?? scheme.sets ?? scheme.reps?.length ?? 1;
}

/** The least and most reps of a set. */
export interface RepRange {
  readonly min: number;
  readonly max: number;
}

/**
 * The reps stated for one set.
 * @param n - the set, from 1
 * @returns null when the set is a time, a distance or as many as possible, or when there is no such set
 */
export function repsOfSet(scheme: Scheme, n: number): RepRange | null {
  if (n < 1 || n > setCount(scheme)) return null;
  if (scheme.reps) {
    const rung = scheme.reps[n - 1];
    return rung === undefined ? null : { min: rung, max: rung };
  }
  const { repsMin, repsMax } = scheme;
  return repsMin === undefined ? null : { min: repsMin, max: repsMax ?? repsMin };
}
