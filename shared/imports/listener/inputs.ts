import type { Candidate } from "../order/candidates";
import { edgeOf } from "../learning/feature-names";
import { keyOf } from "../names/lexicon";
import { phrasedFields } from "../roles/features";
import { phrasesAt, type Heard } from "../roles/hear";
import { candidatesIn, figureOf, isFigure, isRange } from "../roles/stream";
import type { Token } from "../schemes/figures";
import type { Span, Word } from "../types";
import { beside, rowAt, rowsOf, type Matrix } from "./matrix";
import type { Listener } from "./weights";

/** What the listener knows of each word before it listens. */

const SIZES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 15, 16, 20, 24, 25, 29, 30, 40, 45, 50, 59, 60, 80, 90, 100, 119, 120, 150, 180, 250, 400];
/** In seconds. */
const PAUSES = [0, 0.3, 1.2, 4, 10, 25, 60];

/** No number, one with a part, and whole ones by their size. */
const sizeOf = (value: number | undefined): number => (value === undefined ? 0 : !Number.isInteger(value) ? 1 : 2 + edgeOf(value, SIZES));

/** A figure that may say something: its word, and the fields the phrase reader makes of it. */
interface Phrased {
  readonly word: number;
  readonly fields: readonly string[];
}

/** The figures that may say something, in order. */
export function phrasedAt(heard: Heard): Phrased[] {
  return candidatesIn(heard.tokens).map((place) => {
    const token = heard.tokens[place] as Token;
    return { word: token.at, fields: phrasedFields(token, phrasesAt(heard, place)) };
  });
}

/** May a figure be listened to? The only one of its word, or the lower one of a range ("8-10"), not those of "3x8". @param places - the words of all figures, in order */
export const isHeardAlone = (places: readonly number[], at: number, words: readonly Word[]): boolean =>
  places[at - 1] !== places[at] && (places[at + 1] !== places[at] || isRange(words[places[at] ?? -1]?.plain ?? ""));

/** Words of names by their place in it; those of things to do and of others. */
const MARK = { thing: 1, other: 4 } as const;

/** What is listened to. */
export interface Sounds {
  readonly words: readonly Word[];
  readonly sentences: readonly Span[];
  readonly heard: Heard;
  readonly candidates: readonly Candidate[];
}

/** A row of numbers for each word. */
export function inputsOf({ words, sentences, heard, candidates }: Sounds, figures: readonly Phrased[], listener: Listener): Matrix {
  const { numbers } = listener;
  const values = new Map(heard.tokens.filter(isFigure).map((token) => [token.at, figureOf(token)]));
  const begins = new Set(sentences.map(({ from }) => from));
  const [mark, name] = [words.map(() => 0), words.map(() => 0)];
  for (const candidate of candidates) {
    const { from, to } = candidate.span;
    for (let at = from; at < Math.min(to, words.length); at += 1) {
      mark[at] = (candidate.isThing ? MARK.thing : MARK.other) + (at === from ? 0 : at === to - 1 ? 1 : 2);
      name[at] = numbers.ids.get(keyOf(candidate.name)) ?? 1;
    }
  }
  const field: Matrix = { rows: words.length, columns: listener.field.columns, values: new Float32Array(words.length * listener.field.columns) };
  const phrased = new Map<number, Set<string>>();
  for (const { word, fields } of figures) phrased.set(word, new Set([...(phrased.get(word) ?? []), ...fields]));
  for (const [word, fields] of phrased) {
    const sum = rowAt(field, word);
    for (const row of [...fields].map((name) => numbers.fields.get(name))) if (row !== undefined) rowAt(listener.field, row).forEach((value, column) => { sum[column] = (sum[column] ?? 0) + value; });
  }
  return beside(
    rowsOf(listener.word, words.map(({ plain }) => numbers.words.get(plain) ?? 0)),
    rowsOf(listener.klass, heard.classes.map((each) => numbers.classes.get(each) ?? 0)),
    rowsOf(listener.size, words.map((_, at) => sizeOf(values.get(at)))),
    rowsOf(listener.pause, words.map(({ pause }) => edgeOf(pause, PAUSES))),
    rowsOf(listener.begins, words.map((_, at) => (begins.has(at) ? 1 : 0))),
    rowsOf(listener.mark, mark),
    rowsOf(listener.name, name),
    field,
  );
}
