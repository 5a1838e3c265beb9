/** Tenths of a percent of the one-rep max by reps done plus reps in reserve, from 1. Beyond ten the published copies differ. */
const ROW = [1000, 955, 922, 892, 863, 837, 811, 786, 762, 739] as const;

/** Reps in reserve at an RPE of 6 to 10: ten minus the RPE, by convention. @throws {RangeError} outside */
export function rirForRpe(rpe: number): number {
  if (!(rpe >= 6 && rpe <= 10)) throw new RangeError(`Reps in reserve follow from RPE 6 to 10, not ${rpe}`);
  return 10 - rpe;
}

/**
 * Percent of the one-rep max for a number of reps at an RPE, by the chart in common use.
 *
 * Half steps are the mean of their neighbours, rounded half up to a tenth.
 * @param rpe - 6 to 10 in halves
 * @throws {RangeError} when reps plus reps in reserve exceed ten, where copies of the chart disagree
 * @source Tuchscherer, The Reactive Training Manual, 2008
 */
export function rpePercent(reps: number, rpe: number): number {
  if (!Number.isInteger(reps) || reps < 1) throw new RangeError(`Reps are a whole number from 1, not ${reps}`);
  if (!Number.isInteger(rpe * 2)) throw new RangeError(`RPE goes in halves, not ${rpe}`);
  const effort = reps + rirForRpe(rpe);
  if (effort > ROW.length) throw new RangeError(`The chart ends at ${ROW.length} reps done and in reserve together, not ${effort}`);
  const low = ROW[Math.floor(effort) - 1] ?? 0;
  const high = ROW[Math.ceil(effort) - 1] ?? 0;
  return Math.round((low + high) / 2) / 10;
}
