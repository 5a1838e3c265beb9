import { SHORT_FORMS } from "./abbreviations";
import { ADDRESS_SAYINGS } from "./addresses";
import { DATE_SAYINGS } from "./dates";
import { spellInitials } from "./initials";
import { sayMeasures } from "./measures";
import { sayMoney } from "./money";
import { NUMBER, decimalWords, fractionWords, numberWords, ordinalWords } from "./numbers";
import { sayPlurals } from "./plural-figures";
import { withPronunciations } from "./pronunciations";
import { sayRanges } from "./ranges";
import { SCHEME_SAYINGS, type Saying } from "./schemes";
import { NUMBER_SIGNS, SIDES, WORD_SIGNS } from "./signs";
import { withoutOpenStops } from "./stops";
import { TEMPO_SAYINGS } from "./tempos";
import { TIME_SAYINGS } from "./times";
import type { Pronunciation } from "./types";
import { UNIT_PATTERN, unitOf } from "./units";

const FRACTION = new RegExp(String.raw`(?<![\d/.])(?:(\d{1,3})\s+)?(\d)/(\d)(?![\d/])(?:\s?(${UNIT_PATTERN})(?![A-Za-z]))?`, "g");

const sayAll = (text: string, sayings: readonly Saying[]): string =>
  sayings.reduce((said, { written, said: words }) => said.replace(written, (...match: string[]) => words(match)), text);

/** One kind of every space, dash, quote and fraction. */
function plainTypography(text: string): string {
  return text
    .replace(/º/g, "°")
    .replace(/(?<![\d.,])\d{1,3}(?:[\u00a0\u2009\u202f]\d{3})+(?![\d.,]*\d)/g, (figures) => figures.replace(/\D/g, ""))
    .replace(/(\d)(?=[¼½¾⅐-⅞])/g, "$1 ")
    // minutes and seconds, before each double prime becomes two single ones
    .replace(/′/g, "'")
    .replace(/″/g, '"')
    .normalize("NFKC")
    .replace(/⁄/g, "/")
    .replace(/[‘’ʼ]/g, "'")
    .replace(/[‐‑]/g, "-")
    .replace(/−/g, "-")
    // thousands parted by a space that does not break, and by any before "000"
    .replace(/(?<![\d.,])(\d{1,3})((?: 000)+)(?![\d.,]*\d)/g, (_, first: string, rest: string) => first + rest.replace(/ /g, ""))
    .replace(/\s*-{1,2}>\s*/g, " → ")
    .replace(/\s+/g, " ");
}

function sayFractions(text: string): string {
  return text.replace(FRACTION, (written: string, whole: string | undefined, above: string, below: string, unit: string | undefined, at: number, all: string) => {
    const part = fractionWords(Number(above), Number(below));
    // a quarter squat
    const words = part !== null && /\ba\s$/i.test(all.slice(Math.max(0, at - 3), at)) ? part.replace(/^one /, "") : part;
    const measured = unit === undefined ? null : unitOf(unit);
    if (words === null) return unit === undefined && whole === undefined ? `${above} over ${below}` : written;
    if (whole !== undefined) {
      return `${numberWords(Number(whole))} and ${words === "half" || words.startsWith("one ") ? words.replace(/^(?:one )?/, "a ") : words}${measured ? ` ${measured.many}` : unit ?? ""}`;
    }
    return measured ? `${words} ${words === "half" ? "a" : "of a"} ${measured.one}` : words + (unit ?? "");
  });
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
 * Known limits: telephone numbers, and years that no month or "in" announces, are read as plain numbers; a date in figures
 * that may be read in two ways is read figure by figure.
 */
export function spokenForm(text: string, pronunciations: readonly Pronunciation[] = []): string {
  const own = sayAll(withPronunciations(plainTypography(text), pronunciations), ADDRESS_SAYINGS);
  let said = SHORT_FORMS.reduce((open, { written, said: words }) => open.replace(written, words), withoutOpenStops(own));
  said = sayAll(said, SIDES);
  said = sayPlurals(sayAll(said, TEMPO_SAYINGS));
  said = sayAll(said, SCHEME_SAYINGS);
  said = sayAll(said, DATE_SAYINGS);
  said = sayAll(said, TIME_SAYINGS);
  said = sayRanges(sayFractions(said));
  said = sayAll(said, NUMBER_SIGNS);
  said = sayMeasures(sayMoney(said));
  said = said.replace(/(?<!\d)(\d+)(?:st|nd|rd|th)\b/gi, (_, figures: string) => ordinalWords(Number(figures.slice(0, 15))));
  said = said.replace(/(\d)\/(?=\d)/g, "$1 over ");
  said = said.replace(new RegExp(NUMBER, "g"), (figures, at: number, whole: string) => {
    const before = /[\p{L}\p{M}]/u.test(whole[at - 1] ?? "") ? " " : "";
    const after = /[\p{L}\p{M}]/u.test(whole[at + figures.length] ?? "") ? " " : "";
    return before + decimalWords(figures) + after;
  });
  return spellInitials(tidy(sayAll(said, WORD_SIGNS)));
}
