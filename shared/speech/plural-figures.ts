import { numberWords } from "./numbers";
import { yearWords } from "./years";

/** A number with an s that is neither seconds nor a single number: ages, decades, age groups, weights named by their number. */
export interface PluralFigure {
  readonly at: number;
  readonly end: number;
  readonly said: string;
}

/** "ninety" is "nineties", "six" "sixes". */
const manyOf = (words: string): string => words.replace(/y$/, "ie").replace(/x$/, "xe") + "s";

const FIGURE = /(?<![\p{L}\d.,'’‘])(['’‘]?)(\d{1,4})((?:\.5)?)s(?![\p{L}\d])/gu;
/** Those who are in their forties, and weights that one takes hold of. */
const LEADS = /\b(?:the|these|those|my|your|his|her|our|their|pair of)\s(?:(?:early|late|mid)[\s-])?$|\b(?:early|late|mid)[\s-]$/i;
/** The under-15s; without a hyphen a group where the words before show that people are meant. */
const GROUP = /\p{L}-$|(?:^|[.!?]\s|\b(?:the|our|my|all|(?:class|group|course|team)(?:es|s)?\sfor)\s)(?:under|over)\s$/iu;
/** What makes it seconds all the same: "the 30s rest", "your 40s on". */
const INTERVAL = /^\s(?:rests?|breaks?|holds?|pauses?|planks?|hangs?|stretch(?:es)?|carry|carries|sprints?|efforts?|bursts?|intervals?|rounds?|timers?|marks?|counts?|recovery|work|(?:on|off)(?=\s*(?:[,.;:!?/]|$|and\b|then\b)))\b/i;
const LINK = /^(?:\s?(?:,|\/|&|[-–]|and|or|to|through|over|under)\s?)+$/i;

/** The words of a plural figure, or null where it is seconds. @param before - and `after`: the text beside it */
function saidOf(quote: string, whole: string, half: string, before: string, after: string): string | null {
  const value = Number(whole);
  if (whole.length === 4 && half === "") {
    const isDecade = /^(?:1[5-9]|20)\d0$/.test(whole) && (whole.startsWith("19") || /\b(?:the|early|late|mid)[\s-]$/i.test(before));
    return isDecade ? manyOf(value === 2000 ? numberWords(value) : yearWords(value)) : null;
  }
  const isOne = (quote !== "" && value % 10 === 0) || ((LEADS.test(before) || GROUP.test(before)) && !INTERVAL.test(after));
  return isOne ? manyOf(numberWords(value) + (half ? " point five" : "")) : null;
}

/** As much of a text beside a figure as shows what it is. */
const NEAR = 40;

/** The plural figures of a text, in order. One leads to the next: "in your 40s and 50s". */
export function pluralFigures(text: string): PluralFigure[] {
  const found: PluralFigure[] = [];
  for (const match of text.matchAll(FIGURE)) {
    const [written, quote = "", whole = "", half = ""] = match;
    const end = match.index + written.length;
    const [before, after] = [text.slice(Math.max(0, match.index - NEAR), match.index), text.slice(end, end + NEAR)];
    const last = found.at(-1);
    const isNext = last !== undefined && match.index - last.end < NEAR && LINK.test(text.slice(last.end, match.index)) && !INTERVAL.test(after);
    const said = saidOf(quote, whole, half, before, after) ?? (isNext ? manyOf(numberWords(Number(whole))) : null);
    if (said !== null) found.push({ at: match.index, end, said });
  }
  return found;
}

/** Plural figures in words. */
export function sayPlurals(text: string): string {
  return pluralFigures(text).reduceRight((said, { at, end, said: words }) => said.slice(0, at) + words + said.slice(end), text);
}
