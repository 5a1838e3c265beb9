import { ownFigures } from "../../speech";
import { NUMBER_WORD, digitOf, numberOf } from "./number-words";

/** Units the reader meets as a sign, and how it stands after its number. */
const SIGNS: readonly (readonly [said: string, sign: string])[] = [
  ["kilograms?|kilogrammes?|kilos?", " kg"], ["pounds?", " lb"], ["kilomet(?:re|er)s?", " km"], ["centimet(?:re|er)s?", " cm"], ["millimet(?:re|er)s?", " mm"],
  ["met(?:re|er)s?", " m"], ["per ?cent", "%"], ["degrees?", "°"],
];
/** Nouns of the trade that are counted in figures but stay words. */
const COUNTED = "seconds?|minutes?|hours?|weeks?|grams?|calories|reps?|repetitions|sets?|rounds|steps|breaths|lengths|laps|inch(?:es)?|f(?:ee|oo)t|litres?|liters?";
const EACH = String.raw`(?:on |for )?(?:each|either|per|a) (?:side|leg|arm|hand|foot)`;

const RUN = String.raw`(?:a (?=hundred|thousand))?(?:${NUMBER_WORD}|(?<=\ba )(?:hundred|thousand))(?:[ -](?:and )?(?:${NUMBER_WORD}|hundred|thousand))*(?: point (?:${NUMBER_WORD})(?:[ -](?:${NUMBER_WORD}))*)?(?: and a half)?`;
const SIGN = SIGNS.map(([said]) => said).join("|");
const COUNTS_AFTER = new RegExp(`^(?:[ -](?:${COUNTED})| ${EACH})(?!\\p{L})`, "iu");
/** One number, a range or a choice of two, with the unit or noun it counts. */
const NUMBERS = new RegExp(String.raw`(?<![\p{L}\p{N}'’-])(${RUN})(?: (to|or) (${RUN}))?(?![\p{L}'’]|-(?!(?:${COUNTED}|${SIGN})(?!\p{L})))(?:[ -](${SIGN})(?!\p{L}))?`, "giu");
/** A small number that goes on from another in words stays like it: "two, maybe three seconds". */
const GOES_ON = new RegExp(String.raw`(?<![\p{L}-])(?:${NUMBER_WORD}),?(?: (?:or|and|maybe|perhaps|even))* $`, "iu");
/** Numbers that follow these are figures however small. */
const LEADS = /(?:\bsets? of|\brounds? of|\bRPE|\bRIR|\btempo|\bset|\bat least|\bup to) $/i;
const DIGIT = `(?:${["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"].join("|")}|x)`;
const TEMPO = new RegExp(String.raw`\btempo (${DIGIT}(?:[ -]${DIGIT}){2,3})(?![\p{L}-])`, "giu");
/** From here on a number is read faster in figures. @source BBC Subtitle Guidelines, "Numbers": figures above ten, and with units; second-hand */
const FIGURES_FROM = 11;

/** Halves of what is counted one by one are read as a half: "2½ steps"; of what is measured as a decimal. */
const halves = (value: number): string => `${value > 1 ? Math.floor(value) : ""}½`;
const figures = (value: number): string => (value >= 10_000 ? value.toLocaleString("en") : String(value));

interface Read {
  readonly first: string;
  readonly link: string | undefined;
  readonly second: string | undefined;
  readonly sign: string | undefined;
  /** The text on either side, and whether a number before it that it goes on from stays in words. */
  readonly before: string;
  readonly after: string;
  readonly goesOn: boolean;
}

/** A number, a range or a choice in figures, where figures are read faster; else as it is written. */
function inFigures(written: string, { first, link, second, sign, before, after, goesOn }: Read): string {
  const value = numberOf(first);
  const until = second === undefined ? null : numberOf(second);
  if (value === null || (second !== undefined && until === null)) return written;
  const unit = sign === undefined ? null : (SIGNS.find(([said]) => new RegExp(`^(?:${said})$`, "i").test(sign))?.[1] ?? null);
  const counts = COUNTS_AFTER.test(after) || LEADS.test(before);
  const top = until ?? value;
  const isSpoken = Number.isInteger(value) || / and a half$/i.test(first);
  if (value < FIGURES_FROM && goesOn) return written;
  if (unit === null && isSpoken && top < FIGURES_FROM && !(counts && top >= 2)) return written;
  const isCounted = unit === null && counts;
  const read = (number: number): string => (isCounted && number % 1 === 0.5 ? halves(number) : figures(number));
  return `${read(value)}${until === null ? "" : ` ${link ?? ""} ${read(until)}`}${unit ?? ""}`;
}

/** Numbers in figures. One style a phrase: a number that goes on from another is in words where that one is. */
function withFigures(text: string): string {
  // Where the last number that stands in figures now ends.
  let changedTo = 0;
  return text.replace(NUMBERS, (written: string, first: string, link: string | undefined, second: string | undefined, sign: string | undefined, at: number, whole: string) => {
    const before = whole.slice(0, at);
    const from = GOES_ON.exec(before);
    const read = inFigures(written, { first, link, second, sign, before, after: whole.slice(at + written.length), goesOn: from !== null && from.index >= changedTo });
    if (read !== written) changedTo = at + written.length;
    return read;
  });
}

/** Replaces shapes of shorthand, but no figures whose letter is their own: tempos (31X0), ages and weights (the 40s). */
function replaceShorthand(text: string, shape: RegExp, spaced: (match: readonly string[]) => string): string {
  const own = ownFigures(text);
  return text.replace(shape, (...match: string[]) => {
    const at = Number(match.at(-2));
    return own.some((one) => at >= one.at && at < one.end) ? (match[0] ?? "") : spaced(match);
  });
}

/** Shorthand with room to read: "3x8@42.5kg" is "3 x 8 at 42.5 kg". */
function spacedShorthand(text: string): string {
  const sets = replaceShorthand(text, /(?<![\p{L}\d.])(?<!\btempo:?\s?)(\d{1,3})\s?[x×]\s?(?=\d|AMRAP\b)/giu, (m) => `${m[1] ?? ""} x `);
  const units = sets.replace(/(\d)\s?(kg|lbs?|km|cm|mm|min)\b/g, "$1 $2");
  return replaceShorthand(units, /(?<!\p{L}-)(?<![\p{L}\d.'’‘])(\d+(?:\.\d+)?)(m|s)(?![\p{L}\d])/giu, (m) => `${m[1] ?? ""} ${m[2] ?? ""}`).replace(/\s*@\s*(?=[\d.])/g, " at ").trim();
}

/**
 * A say line spelled for the eye: numbers with units and counts in figures ("42.5 kg", "3 sets of 8 to 10", "tempo 3-1-1-0"),
 * shorthand with spaces ("3 x 8"), marks of emphasis taken off. Breath marks stay. What is said does not change.
 *
 * Small numbers that count nothing stay words ("the last two", "one side"); numbers in a row that are no one number stay as they are.
 */
export function spelledForReader(text: string): string {
  const spaced = spacedShorthand(text.replace(/\s+/g, " ").trim())
    .replace(/(?<![\p{L}\p{N}*])\*(?=[^\s*])([^*]*[^\s*])\*(?![\p{L}\p{N}*])/gu, "$1")
    .replace(TEMPO, (_, digits: string) => `tempo ${digits.split(/[ -]/).map((digit) => (digit.toLowerCase() === "x" ? "X" : digitOf(digit.toLowerCase()))).join("-")}`);
  return withFigures(spaced);
}
