/** Percent of the one-rep max by the most reps it allows. Rows 13 and 14 do not exist; row 12 is from memory. */
const TABLE: ReadonlyMap<number, number> = new Map([
  [1, 100], [2, 95], [3, 93], [4, 90], [5, 87], [6, 85], [7, 83], [8, 80], [9, 77], [10, 75], [11, 70], [12, 67], [15, 65],
]);

/**
 * The textbook percent of the one-rep max at which `reps` reps are the most that can be done, or null where the table has no row.
 * A table of averages: people and lifts differ widely.
 * @source Haff & Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed., 2016, ch. 17
 */
export function percentForReps(reps: number): number | null {
  return TABLE.get(reps) ?? null;
}

/** The most reps the table allows at a percent of the one-rep max, or null between its rows. */
export function repsForPercent(percent: number): number | null {
  for (const [reps, value] of TABLE) if (value === percent) return reps;
  return null;
}
