import { SHORT_FORMS, SPELLED } from "./abbreviations";
import { DATE_SAYINGS } from "./dates";
import { moneyWords } from "./money";
import { decimalWords, fractionWords, numberWords, ordinalWords } from "./numbers";
import { SCHEME_SAYINGS, type Saying } from "./schemes";
import { withPronunciations } from "./pronunciations";
import { NUMBER_SIGNS, SIDES, WORD_SIGNS } from "./signs";
import { TIME_SAYINGS } from "./times";
import type { Pronunciation } from "./types";
import { UNIT_PATTERN, UNITS_SAID, unitOf } from "./units";

const NUMBER = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?|\.\d+`;
/** Things named by their weight or length: "a twenty kilo bell", not "kilos". */
const MEASURED_THINGS = "bells?|kettlebells?|dumbbells?|barbells?|plates?|bars?|balls?|sandbags?|vests?|packs?|backpacks?|weights?|holds?|rests?|breaks?|walks?|runs?|rows?|planks?|box(?:es)?|steps?|blocks?|inclines?|declines?|bench(?:es)?|angles?|stacks?|gaps?|jumps?|carry|carries|intervals?|timers?|warm-ups?|cool-downs?|videos?|clips?|sprints?|sessions?";

const FRACTION = new RegExp(String.raw`(?<![\d/.])(?:(\d{1,3})\s+)?(\d)/(\d)(?![\d/])(?:\s?(${UNIT_PATTERN})(?![A-Za-z]))?`, "g");
const RANGE = new RegExp(String.raw`(?<!\d)(${NUMBER})(\s?(?:${UNIT_PATTERN}))?(?:-|\s?[–—]\s?|\s-\s)(?=(?:${NUMBER})(?!-\d))`, "gi");
const MEASURE = new RegExp(String.raw`(?<![A-Za-z\d])(${NUMBER})(\s?-?)(${UNIT_PATTERN})(?![A-Za-z])(?=(\s+(?:${MEASURED_THINGS})\b)?)`, "gi");
const MONEY = new RegExp(String.raw`([$€£])\s?(${NUMBER})(?: to (${NUMBER}))?(?![\d])`, "g");
/** A weight or a length and another: "10kg/22lb". Seconds of work and of rest are said one after the other instead. */
const TWO_UNITS = /(?<![A-Za-z])(\d\s?(?:kgs?|lbs?|g|km|cm|mm|m|yds?|ft))\s?\/\s?(?=\d)/g;
const UNIT_ALONE = new RegExp(String.raw`(?<![\w.])(?:${UNITS_SAID.filter(({ alone }) => alone).map(({ written }) => written).join("|")})(?!\w)`, "g");

const sayAll = (text: string, sayings: readonly Saying[]): string =>
  sayings.reduce((said, { written, said: words }) => said.replace(written, (...match: string[]) => words(match)), text);

/** One kind of every space, dash, quote and fraction. */
function plainTypography(text: string): string {
  return text
    .replace(/º/g, "°")
    .replace(/(\d)(?=[¼½¾⅐-⅞])/g, "$1 ")
    // minutes and seconds, before each double prime becomes two single ones
    .replace(/′/g, "'")
    .replace(/″/g, '"')
    .normalize("NFKC")
    .replace(/⁄/g, "/")
    .replace(/[‘’ʼ]/g, "'")
    .replace(/[‐‑]/g, "-")
    .replace(/−/g, "-")
    .replace(/\s+/g, " ");
}

function sayFractions(text: string): string {
  return text.replace(FRACTION, (written: string, whole: string | undefined, above: string, below: string, unit: string | undefined) => {
    const words = fractionWords(Number(above), Number(below));
    const measured = unit === undefined ? null : unitOf(unit);
    if (words === null) return unit === undefined && whole === undefined ? `${above} over ${below}` : written;
    if (whole !== undefined) {
      return `${numberWords(Number(whole))} and ${words === "half" || words.startsWith("one ") ? words.replace(/^(?:one )?/, "a ") : words}${measured ? ` ${measured.many}` : unit ?? ""}`;
    }
    return measured ? `${words} ${words === "half" ? "a" : "of a"} ${measured.one}` : words + (unit ?? "");
  });
}

function sayMeasures(text: string): string {
  return text.replace(MEASURE, (written: string, figures: string, link: string, unitText: string, thing: string | undefined) => {
    // half a litre is no side of the body
    const unit = unitOf(unitText === "L" && /[.]/.test(figures) ? "l" : unitText);
    if (!unit) return written;
    const single = figures === "1" || link.endsWith("-") || thing !== undefined;
    return `${figures} ${single ? unit.one : unit.many} `;
  });
}

/** From one amount to another; the coin is said once where neither has small coins. */
const sayAmounts = (sign: string, from: string, to: string): string =>
  [from, to].some((figures) => /\.\d\d$/.test(figures)) ? `${moneyWords(sign, from)} to ${moneyWords(sign, to)}` : `${decimalWords(from)} to ${moneyWords(sign, to)}`;

/** Letters that are read one by one: RPE, and any capitals without a vowel. */
function spellLetters(text: string): string {
  return text.replace(/(?<![\p{L}'])[A-Z]{2,5}(?![\p{L}'])/gu, (letters) =>
    (SPELLED as readonly string[]).includes(letters) || !/[AEIOUY]/.test(letters) ? Array.from(letters).join(" ") : letters);
}

/** Only letters, spaces and the marks that shape a voice are left; brackets and dashes become commas. */
function tidy(text: string): string {
  return text
    .replace(/(?<![\p{L}\p{M}])\p{M}+/gu, "")
    .replace(/\.{2,}/g, "…")
    .replace(/\s[-–—]+\s|[–—]|[()[\]{}]/g, " , ")
    .replace(/(?<=[^\s/])\/(?=[^\s/])/g, " or ")
    .replace(/[^\p{L}\p{M}\p{N}\s.,;:!?…'/-]/gu, " ")
    .replace(/(?<!\p{L})-+|-+(?!\p{L})/gu, " ")
    .replace(/(?<!\S)\/(?=\S)|(?<=\S)\/(?!\S)/g, " ")
    .replace(/(?<![\p{L}\p{M}])'+|'+(?![\p{L}\p{M}])/gu, (mark, at: number, whole: string) => (/\p{L}/u.test(whole[at - 1] ?? "") ? mark.slice(0, 1) : " "))
    .replace(/\s+/g, " ")
    .replace(/(?<=(?:^| )\/)(?: ?[.,;:!?…/])+/g, "")
    .replace(/ (?=[.,;:!?…])/g, "")
    .replace(/[.,;:!?…]{2,}/g, (marks) => /[.!?…]/.exec(marks)?.[0] ?? marks.charAt(0))
    .replace(/^[\s.,;:!?…/]+/, "")
    .replace(/[\s,;:/]+$/, "");
}

/**
 * Written coaching text as it is really said: "3x8-10 @ 42.5 kg, tempo 3-1-1-0" is
 * "three sets of eight to ten at forty-two point five kilos, tempo three one one zero".
 *
 * Commas, sentence ends and the breath mark ( / with spaces on both sides) stay, for they are pauses.
 * Text already in words comes back the same. Never throws.
 * @param pronunciations - the speaker's own way of saying some words, before anything else is read
 * Known limits: telephone numbers, and years that no month or "in" announces, are read as plain numbers.
 */
export function spokenForm(text: string, pronunciations: readonly Pronunciation[] = []): string {
  const own = withPronunciations(plainTypography(text), pronunciations);
  let said = SHORT_FORMS.reduce((open, { written, said: words }) => open.replace(written, words), own);
  said = sayAll(said, SIDES);
  said = sayAll(said, SCHEME_SAYINGS);
  said = sayAll(said, DATE_SAYINGS);
  said = sayAll(said, TIME_SAYINGS);
  said = sayFractions(said);
  said = said.replace(RANGE, "$1$2 to ");
  said = sayAll(said, NUMBER_SIGNS);
  said = said.replace(MONEY, (_, sign: string, from: string, to: string | undefined) => (to === undefined ? moneyWords(sign, from) : sayAmounts(sign, from, to)));
  said = said.replace(TWO_UNITS, "$1 or ");
  said = sayMeasures(said);
  said = said.replace(/\bRIR\b/g, "reps in reserve");
  said = said.replace(UNIT_ALONE, (unit) => unitOf(unit)?.many ?? unit);
  said = said.replace(/(?<!\d)(\d+)(?:st|nd|rd|th)\b/gi, (_, figures: string) => ordinalWords(Number(figures.slice(0, 15))));
  said = said.replace(/(\d)\/(?=\d)/g, "$1 over ");
  said = said.replace(new RegExp(NUMBER, "g"), (figures, at: number, whole: string) => {
    const before = /[\p{L}\p{M}]/u.test(whole[at - 1] ?? "") ? " " : "";
    const after = /[\p{L}\p{M}]/u.test(whole[at + figures.length] ?? "") ? " " : "";
    return before + decimalWords(figures) + after;
  });
  return tidy(spellLetters(sayAll(said, WORD_SIGNS)));
}
