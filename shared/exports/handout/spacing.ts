/** How closely a handout is set; points. */
export interface Spacing {
  /** Running words. */
  readonly text: number;
  /** Above and below a row of the plan. */
  readonly row: number;
  /** Below each line of "how each one should look", and below the last of them. */
  readonly line: number;
  readonly last: number;
  /** Height of the place for notes. */
  readonly notes: number;
}

export const ROOMY: Spacing = { text: 11, row: 5, line: 2, last: 6, notes: 84 };
/** Still read at arm's length; it saves a last page that would hold little more than the notes. */
export const TIGHT: Spacing = { text: 10, row: 3, line: 1, last: 3, notes: 62 };
