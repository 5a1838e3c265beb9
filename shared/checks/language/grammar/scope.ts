import { BREAK, type Token } from "../tokens";
import type { Span, Tokenised } from "./template";
import { elementOf } from "./vocabulary";
import { TURNS } from "./phrases";

/** The parts of a text around a place in it, as spans of tokens. */
export interface Around {
  readonly sentence: Span;
  /** From the last turn of thought to the place. */
  readonly clause: Span;
  /** From the place to the end of its sentence. */
  readonly after: Span;
  readonly before: Span;
  /** Behind the sentence. */
  readonly later: Span;
  /** The sentence before this one. */
  readonly previous: Span;
}

const turns = elementOf(TURNS.split("|"));
const listing = elementOf(["or", "nor", "and"]);

const sentenceStart = (tokens: readonly Token[], at: number): number => {
  let i = at;
  while (i > 0 && (tokens[i]?.gap ?? 0) < BREAK.sentence) i -= 1;
  return i;
};

/** "Don't slouch, sag or droop": the commas of such a list open no new thought. */
function isListed(text: Tokenised, from: number, to: number): boolean {
  const places = text.hits.get(listing) ?? [];
  for (let i = 0; i < places.length; i += 2) {
    const at = places[i] ?? 0;
    if (at > from && at <= to + 1 && to - from <= 4) return true;
  }
  return false;
}

/** "On straight, jammed knees": the comma stands between two words for one thing. */
const isAdjectives = (tokens: readonly Token[], at: number): boolean =>
  tokens[at - 1]?.pos === "ADJ" && (tokens[at]?.pos === "ADJ" || tokens[at]?.word.endsWith("ed") === true) && tokens[at]?.gap === BREAK.comma;

/** The clause of a place begins at the last comma, colon or turning word before it, list commas apart. */
function clauseStart(text: Tokenised, sentence: number, at: number): number {
  const turned = text.hits.get(turns) ?? [];
  for (let i = at; i > sentence; i -= 1) {
    if ((text.tokens[i]?.gap ?? 0) >= BREAK.comma && !isListed(text, i, at) && !isAdjectives(text.tokens, i)) return i;
    for (let k = 0; k < turned.length; k += 2) if (turned[k] === i - 1 && !(text.tokens[i - 1]?.word === "instead" && text.tokens[i]?.word === "of")) return i;
  }
  return sentence;
}

export function around(text: Tokenised, { from, to }: Span): Around {
  const { tokens } = text;
  const start = sentenceStart(tokens, from);
  let end = to;
  while (end < tokens.length && (tokens[end]?.gap ?? 0) < BREAK.sentence) end += 1;
  return {
    sentence: { from: start, to: end }, clause: { from: clauseStart(text, start, from), to: from }, before: { from: start, to: from },
    after: { from: to, to: end }, later: { from: end, to: tokens.length }, previous: { from: start > 0 ? sentenceStart(tokens, start - 1) : 0, to: start },
  };
}

/** Does a new thought open between two places? */
export function hasTurn({ tokens, hits }: Tokenised, from: number, to: number): boolean {
  for (let i = from; i <= to; i += 1) if ((tokens[i]?.gap ?? 0) >= BREAK.comma) return true;
  const turned = hits.get(turns) ?? [];
  return turned.some((at, i) => i % 2 === 0 && at >= from && at < to);
}

export const inside = (inner: Span, outer: Span): boolean => inner.from >= outer.from && inner.to <= outer.to;
export const joined = (a: Span, b: Span): Span => ({ from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) });
export const firstOf = (span: Span, words: number): Span => ({ from: span.from, to: Math.min(span.to, span.from + words) });
export const lastOf = (span: Span, words: number): Span => ({ from: Math.max(span.from, span.to - words), to: span.to });
