/** An ending the general counter often miscounts: what remains once it is cut off, and how many syllables it adds to that. */
export interface Ending {
  readonly ending: RegExp;
  /** Letters to cut from the end. */
  readonly cut: number;
  readonly adds: number;
}

/** First match counts. Exceptions stand in the word list. */
export const ENDINGS: readonly Ending[] = [
  // walked, matched, shrugged, charged: no syllable of its own
  { ending: /[a-z]{2}(?:k|ch|g|lp)ed$/, cut: 2, adds: 0 },
  // presses, inches, brushes, boxes: one more
  { ending: /[a-z](?:ss|ch|sh|x|zz)es$/, cut: 2, adds: 1 },
  { ending: /[a-z](?:r|n|l)(?:c|s|g)es$/, cut: 1, adds: 1 },
  // going, seeing, studying: one more
  { ending: /[a-z](?:[oy]|ee)ing$/, cut: 3, adds: 1 },
  // large, charge, merge
  { ending: /[aeiou]rge$/, cut: 1, adds: 0 },
  // functional, professional
  { ending: /[^aeiou][st]ional$/, cut: 5, adds: 2 },
  { ending: /[^aeiou][st]ionally$/, cut: 7, adds: 3 },
];
