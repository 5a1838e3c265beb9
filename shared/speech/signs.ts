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

/**
 * A capital standing alone: "R leg", "(L)", "L then R". Not beside figures, where a unit may be meant, not among spelled letters
 * ("R P E", "L five"), not as an initial.
 */
const alone = (letter: string): RegExp =>
  new RegExp(String.raw`(?<![\p{L}\p{N}.&'/+-]|\d\s|\b[A-Z]\s)${letter}(?![\p{L}\p{N}&'/+-]|\.\s?\p{Lu}|\s[A-Z]s?\b|\s\d|\s(?:zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b)`, "gu");

/** Sides of the body, written as one capital. */
export const SIDES: readonly Saying[] = [
  { written: alone("L"), said: () => "left" },
  { written: alone("R"), said: () => "right" },
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
