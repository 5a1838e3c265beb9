import type { Token } from "./token";

const SMALL = [
  "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen",
  "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
] as const;
const TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"] as const;

const VALUES = new Map<string, number>([
  ...SMALL.map((word, value): [string, number] => [word, value]),
  ...TENS.map((word, at): [string, number] => [word, (at + 2) * 10]),
  ["fourty", 40],
  ["dozen", 12],
]);

/** A whole number in words, hyphenated as in print: 0 to 9999. */
export function numberInWords(value: number): string {
  if (value < 20) return SMALL[value] ?? String(value);
  if (value < 100) return `${TENS[Math.floor(value / 10) - 2] ?? ""}${value % 10 === 0 ? "" : `-${numberInWords(value % 10)}`}`;
  if (value < 1000) return `${numberInWords(Math.floor(value / 100))} hundred${value % 100 === 0 ? "" : ` and ${numberInWords(value % 100)}`}`;
  if (value < 10_000) return `${numberInWords(Math.floor(value / 1000))} thousand${value % 1000 === 0 ? "" : ` ${value % 1000 < 100 ? "and " : ""}${numberInWords(value % 1000)}`}`;
  return String(value);
}

interface Found {
  readonly value: number;
  /** Tokens used. */
  readonly count: number;
}

const wordAt = (tokens: readonly Token[], at: number): string => (tokens[at]?.kind === "word" ? (tokens[at]?.text ?? "") : "");

/** One to ninety-nine: "twelve", "twenty-five", "twenty five". */
function belowHundred(tokens: readonly Token[], at: number): Found | null {
  const value = VALUES.get(wordAt(tokens, at));
  if (value === undefined) return null;
  if (value < 20 || value % 10 !== 0) return { value, count: 1 };
  const hyphen = tokens[at + 1]?.text === "-" && !tokens[at + 1]?.spaced ? 1 : 0;
  const unit = VALUES.get(wordAt(tokens, at + 1 + hyphen));
  if (unit === undefined || unit < 1 || unit > 9) return { value, count: 1 };
  // "twenty-five" is one number, but "thirty five-second holds" names two: the hyphen binds the five to its unit
  if (hyphen === 0 && tokens[at + 2]?.text === "-" && tokens[at + 2]?.spaced === false) return { value, count: 1 };
  return { value: value + unit, count: 2 + hyphen };
}

/** What a number in words begins with, before a "hundred": nothing is counted where the hundred itself is next. */
function leadAt(tokens: readonly Token[], at: number): Found | null {
  const [first, second] = [wordAt(tokens, at), wordAt(tokens, at + 1)];
  if (first === "hundred") return { value: 1, count: 0 };
  if (first === "a" && second === "hundred") return { value: 1, count: 1 };
  if (first === "a" && second === "dozen") return { value: 12, count: 2 };
  return belowHundred(tokens, at);
}

/** Also "a hundred", "one hundred and ten", "two hundred". */
function inWords(tokens: readonly Token[], at: number): Found | null {
  const lead = leadAt(tokens, at);
  if (!lead || wordAt(tokens, at + lead.count) !== "hundred") return lead && lead.count > 0 ? lead : null;
  const next = at + lead.count + 1;
  const skip = wordAt(tokens, next) === "and" ? 1 : 0;
  const tail = belowHundred(tokens, next + skip);
  return { value: lead.value * 100 + (tail?.value ?? 0), count: lead.count + 1 + (tail ? skip + tail.count : 0) };
}

/** Half a unit more: "two and a half", "2 1/2", "2 ½". Tokens used, 0 for none. */
function halfAfter(tokens: readonly Token[], at: number): number {
  if (wordAt(tokens, at) === "and" && wordAt(tokens, at + 1) === "a" && wordAt(tokens, at + 2) === "half") return 3;
  if (wordAt(tokens, at) === "and" && wordAt(tokens, at + 1) === "half") return 2;
  const [one, slash, two, after] = [tokens[at], tokens[at + 1], tokens[at + 2], tokens[at + 3]];
  if (one?.kind === "number" && one.value === 0.5 && one.end - one.start === 1) return 1;
  const tight = slash?.text === "/" && !slash.spaced && two?.spaced === false && after?.text !== "/";
  return one?.value === 1 && one.spaced && tight && two.value === 2 ? 3 : 0;
}

/** Makes numbers of number words, and adds halves to the numbers they follow. */
export function foldNumberWords(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at] as Token;
    const found = token.kind === "number" ? { value: token.value, count: 1 } : inWords(tokens, at);
    if (!found) {
      out.push(token);
      at++;
      continue;
    }
    const half = Number.isInteger(found.value) ? halfAfter(tokens, at + found.count) : 0;
    const count = found.count + half;
    const last = tokens[at + count - 1] as Token;
    const text = count === 1 ? token.text : tokens.slice(at, at + count).map((one) => one.text).join(" ");
    out.push({ kind: "number", text, value: found.value + (half > 0 ? 0.5 : 0), start: token.start, end: last.end, spaced: token.spaced });
    at += count;
  }
  return out;
}
