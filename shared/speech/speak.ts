import { DEFAULT_PACE } from "./pace";
import { saidWords } from "./said-words";
import type { Pace, Spoken } from "./types";

/**
 * How long a text takes to say: every word's length at the speaker's rate, plus the pauses between words.
 *
 * Words and syllables are those of the spoken form. The silence after the last word does not count. Empty text takes 0.
 */
export function speak(text: string, pace: Pace = DEFAULT_PACE): Spoken {
  const words = saidWords(text, pace);
  const seconds = words.reduce((sum, word, at) => sum + word.seconds + (at < words.length - 1 ? word.pauseSeconds : 0), 0);
  return { seconds, words: words.length, syllables: words.reduce((sum, { syllables }) => sum + syllables, 0) };
}

/** Adds up pieces said one after the other, with a silence between them. */
export function spokenTogether(pieces: readonly Spoken[], silenceSeconds: number): Spoken {
  const said = pieces.filter(({ words }) => words > 0);
  return {
    seconds: said.reduce((sum, { seconds }) => sum + seconds, 0) + silenceSeconds * Math.max(0, said.length - 1),
    words: said.reduce((sum, { words }) => sum + words, 0),
    syllables: said.reduce((sum, { syllables }) => sum + syllables, 0),
  };
}
