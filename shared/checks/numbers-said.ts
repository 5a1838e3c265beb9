import { NUMBER_VALUES } from "../speech";

/** A number in a text, in figures or in words. */
export interface NumberSaid {
  readonly value: number;
  readonly start: number;
  readonly end: number;
  readonly inWords: boolean;
}

const wordsBetween = (least: number, most: number): string[] => [...NUMBER_VALUES].filter(([, value]) => value >= least && value <= most).map(([word]) => word);
const SMALL = `(?:(?:${wordsBetween(20, 90).join("|")})(?:[ -](?:${wordsBetween(1, 9).join("|")}))?|${wordsBetween(0, 19).reverse().join("|")})`;
const SAID = new RegExp(`\\b(?:\\d+(?:[.,]\\d+)?|(?:(?:a|one|two) hundred(?: and ${SMALL})?|${SMALL})(?: (?:and a half|point five))?)(?![\\w-])`, "gi");

const smallValue = (words: string): number => words.split(/[ -]/).reduce((sum, word) => sum + (NUMBER_VALUES.get(word) ?? 0), 0);

function valueOf(said: string): number {
  const low = said.toLowerCase();
  if (/^\d/.test(low)) return Number(low.replace(",", "."));
  const half = / (?:and a half|point five)$/.test(low) ? 0.5 : 0;
  const whole = low.replace(/ (?:and a half|point five)$/, "");
  const hundred = /^(a|one|two) hundred(?: and (.+))?$/.exec(whole);
  if (hundred) return (hundred[1] === "two" ? 200 : 100) + smallValue(hundred[2] ?? "") + half;
  return smallValue(whole) + half;
}

/** The numbers a text says, 0 to 299 in words and any in figures, in order. */
export function numbersSaid(text: string): NumberSaid[] {
  return [...text.matchAll(SAID)].map((match) => ({ value: valueOf(match[0]), start: match.index, end: match.index + match[0].length, inWords: !/^\d/.test(match[0]) }));
}
