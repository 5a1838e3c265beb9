/** A number as it is written, as alternatives of a regular expression: thousands commas and decimals allowed. */
export const NUMBER = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?|\.\d+`;

const SMALL = [
  "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
  "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
] as const;
const TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"] as const;
const SCALES = [[1e12, "trillion"], [1e9, "billion"], [1e6, "million"], [1e3, "thousand"], [100, "hundred"]] as const;

/** What the single words of numbers stand for: "zero" to "nineteen", "twenty" to "ninety". */
export const NUMBER_VALUES: ReadonlyMap<string, number> = new Map([
  ...SMALL.map((word, value): [string, number] => [word, value]),
  ...TENS.flatMap((word, tens): [string, number][] => (word === "" ? [] : [[word, tens * 10]])),
]);

/** Is a word, in small letters, a number in figures or in words? */
export const isNumberWord = (word: string): boolean => /^\d/.test(word) || NUMBER_VALUES.has(word);

/** Ordinals that are not their cardinal with "th". */
const ORDINALS: Readonly<Record<string, string>> = {
  one: "first", two: "second", three: "third", five: "fifth", eight: "eighth", nine: "ninth", twelve: "twelfth",
};

/** Longest run of digits read as one number; longer ones are read digit by digit. */
const MOST_DIGITS = 15;

/**
 * A whole number in words: 142 is "one hundred forty-two".
 * @param n - whole, 0 to 999,999,999,999,999; no unit
 */
export function numberWords(n: number): string {
  for (const [size, name] of SCALES) {
    if (n >= size) {
      const rest = n % size;
      return `${numberWords(Math.floor(n / size))} ${name}${rest > 0 ? ` ${numberWords(rest)}` : ""}`;
    }
  }
  if (n < 20) return SMALL[n] ?? "";
  const ones = n % 10;
  return `${TENS[Math.floor(n / 10)] ?? ""}${ones > 0 ? `-${SMALL[ones] ?? ""}` : ""}`;
}

/** Digits one after the other, as a tempo or a long number is read: "31" is "three one"; other characters are left out. */
export function digitWords(digits: string): string {
  return Array.from(digits.replace(/\D/g, ""), (digit) => SMALL[Number(digit)] ?? "").join(" ");
}

/** A number as written, with or without thousands commas and decimals: "1,042.50" is "one thousand forty-two point five zero". */
export function decimalWords(written: string): string {
  const [whole = "", decimals = ""] = written.replace(/,/g, "").split(".");
  const said = whole.length > MOST_DIGITS ? digitWords(whole) : numberWords(Number(whole));
  return decimals ? `${said} point ${digitWords(decimals)}` : said;
}

/** Place in an order: 3 is "third", 21 is "twenty-first". Whole numbers from 0. */
export function ordinalWords(n: number): string {
  const words = numberWords(n);
  const [, before = "", last = ""] = /^(.*?)([a-z]+)$/.exec(words) ?? [];
  const place = ORDINALS[last] ?? (last.endsWith("y") ? `${last.slice(0, -1)}ieth` : `${last}th`);
  return before + place;
}

const PARTS: Readonly<Record<string, string>> = { 2: "half", 3: "third", 4: "quarter", 5: "fifth", 8: "eighth" };

/** "3/4" is "three quarters", "1/2" is "half"; null when people would not read it as a fraction. */
export function fractionWords(above: number, below: number): string | null {
  const part = PARTS[below];
  if (part === undefined || above < 1 || above >= below) return null;
  if (below === 2) return "half";
  return `${numberWords(above)} ${part}${above > 1 ? "s" : ""}`;
}
