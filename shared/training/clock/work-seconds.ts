import type { Scheme, Tempo } from "../types";
import { repsOfSet, setCount } from "../set-line/count";
import { ASSUMED } from "./assumptions";

/** Seconds of one rep: the sum of the tempo, X counting one; phases that are not stated take their usual length. */
export function repSeconds(tempo: Tempo | undefined): number {
  return ASSUMED.phases.reduce<number>((sum, usual, at) => {
    const phase = tempo?.[at] ?? usual;
    return sum + (phase === "X" ? ASSUMED.fastLift : phase);
  }, 0);
}

/** Reps to plan with: the middle of a range, rounded up; the assumed number where none is stated. */
function plannedReps(scheme: Scheme, n: number): number {
  const range = repsOfSet(scheme, n);
  return range ? Math.ceil((range.min + range.max) / 2) : ASSUMED.amrapReps;
}

/** One side of one set without drops. */
function oneSide(scheme: Scheme, n: number): number {
  if (scheme.seconds !== undefined) return scheme.seconds;
  if (scheme.meters !== undefined) return scheme.meters / ASSUMED.carryPace;
  return plannedReps(scheme, n) * repSeconds(scheme.tempo);
}

/** Whole seconds of one set. */
export interface SetSeconds {
  /** Both sides, drops and the change of side. */
  readonly work: number;
  /** The part of it that is the change of side. */
  readonly change: number;
}

/**
 * How long a set takes, in whole seconds. Each side counts twice and the change between; drops after the last set count
 * like the set again; the last minute of an EMOM runs to its end.
 * @param n - the set, from 1
 */
export function setSeconds(scheme: Scheme, n: number): SetSeconds {
  const last = n === setCount(scheme);
  if (scheme.emomMinutes !== undefined && last) return { work: 60, change: 0 };
  const change = scheme.eachSide ? ASSUMED.changeOfSide : 0;
  const once = oneSide(scheme, n) * (scheme.eachSide ? 2 : 1) + change;
  const drops = last ? (scheme.dropSets ?? 0) : 0;
  const work = Math.round(once + drops * (once + ASSUMED.drop));
  return scheme.emomMinutes === undefined ? { work, change: change * (1 + drops) } : { work: Math.min(60, work), change: Math.min(change, 60) };
}
