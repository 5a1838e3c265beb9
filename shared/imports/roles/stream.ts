import type { Mention } from "../names/find";
import { tokensOf, type Token } from "../schemes/figures";
import type { Word } from "../types";

/** Speech as the tagger reads it: numbers as figures, each exercise's name as one token. */

/** Stands for the name of an exercise. */
export const NAME = "<name>";
/** Stands where a sentence ends. */
export const STOP = "|";

/** What may say something about sets besides a number. */
const FLAGS = new Set("each per every either both bodyweight amrap many failure max same swap switch once singles doubles triples single triple pair double other long nothing no bar empty".split(" "));
/** "A side", "a leg". */
const OF_SIDE = /^(?:side|leg|arm|hand)s?$/;

/** Is it a number, or bells named by their weight ("the sixteens")? */
export const isFigure = ({ text, value }: Token): boolean => value !== null || /^\d+(?:\.\d+)?s$/.test(text);
export const figureOf = ({ text, value }: Token): number => value ?? Number.parseFloat(text);

/** "8-10": two figures in one word. */
export const isRange = (plain: string): boolean => /^\d+(?:\.\d+)?[-–]\d+(?:\.\d+)?$/.test(plain);

/** Tokens that may carry a role, by their place. */
export const candidatesIn = (tokens: readonly Token[]): number[] =>
  tokens.flatMap((token, at) => (isFigure(token) || FLAGS.has(token.text) || (token.text === "a" && OF_SIDE.test(tokens[at + 1]?.text ?? "")) ? [at] : []));

/**
 * The words as tokens, in order.
 * @param skip - hesitations and sounds
 * @param starts - words that begin a sentence
 */
export function streamOf(words: readonly Word[], mentions: readonly Mention[], skip: ReadonlySet<number>, starts: ReadonlySet<number>): Token[] {
  const things = mentions.filter(({ isThing, name }) => isThing || !name.everyday);
  const silent = new Set([...skip, ...things.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, at) => from + at))]);
  const tokens = tokensOf(words, 0, words.length, silent, starts);
  const names = things.map(({ from }): Token => ({ text: NAME, value: null, at: from, stop: starts.has(from) }));
  return [...tokens, ...names].sort((a, b) => a.at - b.at);
}
