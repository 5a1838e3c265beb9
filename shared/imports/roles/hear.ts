import type { Mention } from "../names/find";
import { corrected } from "../schemes/corrections";
import type { Token } from "../schemes/figures";
import type { Statement } from "../schemes/statement";
import { statementsIn } from "../schemes/statements";
import type { Span, Word } from "../types";
import { featuresAt } from "./features";
import { NAME, streamOf } from "./stream";

/** Speech ready to be tagged. */
export interface Heard {
  /** Parts of speech, one a word of the source. */
  readonly classes: readonly string[];
  readonly tokens: readonly Token[];
  /** What the phrase reader found, in order. */
  readonly phrases: readonly Statement[];
}

/** Tokens of speech, and what the phrase reader makes of them. */
export function hear(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[], skip: ReadonlySet<number>, classes: readonly string[]): Heard {
  const tokens = streamOf(words, mentions, skip, new Set(sentences.map(({ from }) => from)));
  const names = mentions.filter(({ isThing }) => isThing).map(({ from }) => from);
  return { classes, tokens, phrases: statementsIn(corrected(tokens.filter(({ text }) => text !== NAME)), names) };
}

/** What the phrase reader found around the token at a place. */
export function phrasesAt({ tokens, phrases }: Heard, place: number): Statement[] {
  const word = tokens[place]?.at ?? -1;
  return phrases.filter(({ from, to }) => from <= word && to >= word);
}

/** The features of the candidates at some places. */
export function featuresOf(heard: Heard, places: readonly number[]): string[][] {
  return places.map((place) => featuresAt(heard.tokens, place, phrasesAt(heard, place), heard.classes));
}
