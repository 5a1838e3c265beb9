import type { Saying } from "./schemes";

/** Signs beside numbers, read while the numbers are still figures. */
export const NUMBER_SIGNS: readonly Saying[] = [
  { written: /[~≈]\s?(?=\d)/g, said: () => "about " },
  { written: /±\s?(?=\d)/g, said: () => "plus or minus " },
  { written: /(?:≤|<=)\s?(?=\d)/g, said: () => "at most " },
  { written: /(?:≥|>=)\s?(?=\d)/g, said: () => "at least " },
  { written: /<\s?(?=\d)/g, said: () => "less than " },
  { written: />\s?(?=\d)/g, said: () => "more than " },
  { written: /(?<![\w)%°.-])[-−](?=\d)/g, said: () => "minus " },
  { written: /(\d)#(?!\d)/g, said: (m) => `${m[1] ?? ""} lb` },
  { written: /(\d)\s?\+(?!\d)/g, said: (m) => `${m[1] ?? ""} plus ` },
];

/** Signs that are words wherever they stand; what is in no table has no sound and goes. */
export const WORD_SIGNS: readonly Saying[] = [
  { written: /&/g, said: () => " and " },
  { written: /\+/g, said: () => " plus " },
  { written: /=/g, said: () => " equals " },
  { written: /%/g, said: () => " percent " },
  { written: /°/g, said: () => " degrees " },
  { written: /×/g, said: () => " times " },
  { written: /→/g, said: () => " to " },
];
