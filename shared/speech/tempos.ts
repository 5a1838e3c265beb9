import { digitWords } from "./numbers";
import type { Saying } from "./schemes";

const part = (match: readonly string[], index: number): string => match[index] ?? "";
const tempoWords = (figures: string): string => Array.from(figures.replace(/[^\dX]/gi, ""), (figure) => (/x/i.test(figure) ? "X" : digitWords(figure))).join(" ");

/**
 * A tempo that stands without the word: no line has 31 sets of no rep. "10x3" and "20x5" are sets and stay so; after "@" any four
 * figures with an X are a tempo.
 */
const BARE = String.raw`(?<![\w.,-])(?:[1-9]\d[xX]0|[2-9]\dX[0-3]|(?<=@\s?)\d\d(?:X\d|\dX|XX))(?![\w.-]*\w)`;
/** Four figures that go along with one that has an X: "4010, then 31X1". */
const FIGURES = "[0-6]{4}";
const LINK = String.raw`(?:,\s(?:then\s)?|\s(?:then|or|and|to)\s|\s?\/\s?)`;
const ALONG = String.raw`(?<![\w.,-])${FIGURES}(?=${LINK}${BARE})|(?<=${BARE}${LINK})${FIGURES}(?![\w.-]*\w)`;
/** A load that is no load: 3x8 @ 4010. */
const AFTER_SETS = String.raw`(?<=\d\s?[x×]\s?\d+(?:-\d+)?\s?@\s?)${FIGURES}(?=[,.;)]|\s*$)`;
const WITHOUT_THE_WORD = new RegExp(`${ALONG}|${BARE}|${AFTER_SETS}`, "g");

/** Where a text has tempos that no word announces. */
export const bareTempos = (text: string): { readonly at: number; readonly end: number }[] =>
  Array.from(text.matchAll(WITHOUT_THE_WORD), ({ 0: written, index }) => ({ at: index, end: index + written.length }));

/** Tempos, figure by figure. */
export const TEMPO_SAYINGS: readonly Saying[] = [
  // tempo 3-1-1-0, tempo 3:1:1, tempo 31X0, and 3-1-X-0 anywhere: four figures are a tempo
  { written: /\btempo(\sof|\sis|\sat|:)?\s*([\dX](?:\s?[-–/:.]\s?[\dX]){2,3})(?![\w-]|[:.]\d)/gi, said: (m) => `tempo${part(m, 1).replace(":", "")} ${tempoWords(part(m, 2))}` },
  { written: /\btempo:?\s*([\dX]{3,4})\b/gi, said: (m) => `tempo ${tempoWords(part(m, 1))}` },
  { written: /(?<![\w.-])(\d-\d-[\dX]-\d)(?![\w-])/gi, said: (m) => tempoWords(part(m, 1)) },
  // 4010 tempo, a 3:1:1 tempo, a tempo of 31X0
  { written: /(?<![\w.,-])(?=X*\d)([\dX]{4}|[\dX](?::[\dX]){2,3})(?=[\s-]tempo\b)/gi, said: (m) => tempoWords(part(m, 1)) },
  { written: /\btempo\s(of|is|at)\s(?=X*\d)([\dX]{4})\b/gi, said: (m) => `tempo ${part(m, 1)} ${tempoWords(part(m, 2))}` },
  { written: WITHOUT_THE_WORD, said: (m) => tempoWords(part(m, 0)) },
];
