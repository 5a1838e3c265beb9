import { DEFAULT_PACE } from "./pace";
import { spokenForm } from "./spoken-form";
import { syllablesOf } from "./syllables";
import type { Pace, Spoken } from "./types";

/** Seconds of silence a word's closing punctuation asks for. */
function pauseAfter(word: string, pace: Pace): number {
  if (/[.!?…]['"]*$/.test(word)) return pace.sentenceSeconds;
  return /[,;:]['"]*$/.test(word) ? pace.commaSeconds : 0;
}

/**
 * How long a text takes to say: syllables over the speaking rate, plus the pauses between words.
 *
 * Words and syllables are those of the spoken form. Where marks meet (a full stop before a breath) the longer pause counts;
 * the silence after the last word does not. Empty text takes 0.
 */
export function speak(text: string, pace: Pace = DEFAULT_PACE): Spoken {
  let [words, syllables, silence, pending] = [0, 0, 0, 0];
  for (const token of spokenForm(text).split(" ")) {
    if (token === "/") pending = Math.max(pending, pace.breathSeconds);
    else if (/[\p{L}\p{N}]/u.test(token)) {
      silence += words > 0 ? pending : 0;
      pending = pauseAfter(token, pace);
      words += 1;
      syllables += syllablesOf(token);
    }
  }
  return { seconds: syllables / pace.syllablesPerSecond + silence, words, syllables };
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
