/** A number in a text, in figures or in words. */
export interface NumberSaid {
  readonly value: number;
  readonly start: number;
  readonly end: number;
  readonly inWords: boolean;
}

const UNITS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"];
const TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
const SMALL = `(?:(?:${TENS.join("|")})(?:[ -](?:${UNITS.slice(1, 10).join("|")}))?|${[...UNITS].reverse().join("|")})`;
const SAID = new RegExp(`\\b(?:\\d+(?:[.,]\\d+)?|(?:(?:a|one|two) hundred(?: and ${SMALL})?|${SMALL})(?: (?:and a half|point five))?)(?![\\w-])`, "gi");

function smallValue(words: string): number {
  return words.split(/[ -]/).reduce((sum, word) => sum + (TENS.includes(word) ? (TENS.indexOf(word) + 2) * 10 : Math.max(0, UNITS.indexOf(word))), 0);
}

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
