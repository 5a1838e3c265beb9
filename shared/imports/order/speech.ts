import type { BlockKind } from "../../episode";
import type { Exercise, Family } from "../../exercises";
import type { Statement } from "../schemes/statement";
import type { Span, Word } from "../types";
import type { Candidate } from "./candidates";

/** A part of the running order, in sentences. */
export interface Part extends Span {
  readonly kind: BlockKind;
  readonly title: string;
  readonly exercise: Exercise | null;
  /** The word its name begins at; null for other parts and for those of a list. */
  readonly named: number | null;
  /** The words at which the speaker turns to it and names it; null for other parts. */
  readonly begins: { readonly turn: number; readonly name: number } | null;
  /** Its name as it was said; empty for other parts and for an exercise that nothing names. */
  readonly said: string;
  /** The same number for exercises that are begun in one breath and done in turn. */
  readonly pair: number | null;
}

/** Where an exercise begins: the word at which the speaker turns to it, and what names it. */
export interface Begun {
  readonly turn: number;
  readonly candidate: Candidate;
}

/** What the running order is made from. */
export interface Speech {
  readonly words: readonly Word[];
  readonly sentences: readonly Span[];
  /** The sentences' plain words. */
  readonly said: readonly string[];
  readonly candidates: readonly Candidate[];
  readonly statements: readonly (Statement & { readonly sentence: number })[];
  /** What whole phrases say about sets, where the statements are of single figures. */
  readonly phrases: readonly (Statement & { readonly sentence: number })[];
  /** The exercises of the session, in order. */
  readonly begun: readonly Begun[];
  /** The part of an episode each sentence belongs to. */
  readonly zones: readonly BlockKind[];
  /** Seconds of silence after each sentence; 0 where unknown. */
  readonly silences: readonly number[];
}

/** The same with its statements by sentence, so that a long speech is not searched whole for each name. */
export interface Indexed extends Speech {
  readonly bySentence: ReadonlyMap<number, readonly Placed[]>;
}

const PREPARING: readonly Family[] = ["mobility-warmup"];
const EASING: readonly Family[] = ["cooldown-stretch"];
const EASY_NAME = /\b(?:stretch|pose|hip switch|downward dog|upward dog|thread the needle|airplane|shin box)\b/;

const isFamily = ({ name }: Candidate, families: readonly Family[]): boolean => (name.exercise ? families.includes(name.exercise.family) : families.length > 0 && EASY_NAME.test(name.title.toLowerCase()));
export const isMobile = (candidate: Candidate): boolean => isFamily(candidate, [...PREPARING, ...EASING]);

export type Placed = Speech["statements"][number];

/** The speech with its statements by sentence. */
export function indexed(speech: Speech): Indexed {
  const bySentence = new Map<number, Placed[]>();
  for (const statement of speech.statements) bySentence.set(statement.sentence, [...(bySentence.get(statement.sentence) ?? []), statement]);
  return { ...speech, bySentence };
}

/** The statements of the sentences from `from` up to, not including, `until`. */
export function statementsIn({ bySentence }: Indexed, from: number, until: number): Placed[] {
  const found: Placed[] = [];
  for (let sentence = from; sentence < until; sentence += 1) found.push(...(bySentence.get(sentence) ?? []));
  return found;
}

export interface Opened {
  readonly sentence: number;
  readonly kind: BlockKind;
  /** The word at which the speaker turns to it; null where none is known. */
  readonly turn: number | null;
  readonly candidate: Candidate | null;
}

/** The sentence a word stands in. */
export function sentenceAt({ sentences }: Pick<Speech, "sentences">, word: number): number {
  let [low, high] = [0, sentences.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((sentences[middle]?.from ?? 0) <= word) low = middle;
    else high = middle - 1;
  }
  return low;
}
