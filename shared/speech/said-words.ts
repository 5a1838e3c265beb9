import { memoOn } from "../episode";
import { beatsOf } from "./beats";
import { spokenForm } from "./spoken-form";
import { syllablesOf } from "./syllables";
import type { Pace } from "./types";

/** One word of the spoken form with its length and the pause it asks for. */
export interface SaidWord {
  /** With its closing punctuation. */
  readonly word: string;
  readonly syllables: number;
  /** Seconds of sound. */
  readonly seconds: number;
  /** Seconds of silence after it; 0 inside a phrase. After the last word it is what would follow if more were said. */
  readonly pauseSeconds: number;
}

/** Seconds of silence a word's closing punctuation asks for. */
function pauseAfter(word: string, pace: Pace): number {
  if (/[.!?…]['"]*$/.test(word)) return pace.sentenceSeconds;
  return /[,;:]['"]*$/.test(word) ? pace.commaSeconds : 0;
}

/** Texts remembered per pace, then it begins anew; longer ones are no lines and are not kept. Sentences and breaths are asked for again at every letter. */
const MOST_KNOWN = 2000;
const MOST_LETTERS = 600;
const knownAt = memoOn((_pace: Pace) => new Map<string, readonly SaidWord[]>());

/** The words of a text as they are said, in order. Where marks meet (a full stop before a breath) the longer pause counts. */
export function saidWords(text: string, pace: Pace): readonly SaidWord[] {
  const known = knownAt(pace);
  const hit = known.get(text);
  if (hit) return hit;
  const words = wordsAsSaid(text, pace);
  if (text.length > MOST_LETTERS) return words;
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(text, words);
  return words;
}

function wordsAsSaid(text: string, pace: Pace): SaidWord[] {
  const found: { word: string; pauseSeconds: number }[] = [];
  for (const token of spokenForm(text, pace.pronunciations).split(" ")) {
    const last = found.at(-1);
    if (token === "/") {
      if (last) last.pauseSeconds = Math.max(last.pauseSeconds, pace.breathSeconds);
    } else if (/[\p{L}\p{N}]/u.test(token)) found.push({ word: token, pauseSeconds: pauseAfter(token, pace) });
  }
  return found.map(({ word, pauseSeconds }, at) => ({
    word,
    syllables: syllablesOf(word),
    seconds: beatsOf(word, pauseSeconds > 0 || at === found.length - 1) / pace.syllablesPerSecond,
    pauseSeconds,
  }));
}
