import { sentencesOf, stretchesOf } from "./sentences";
import { syllablesOf } from "./syllables";
import type { Readability, ReadingCounts } from "./types";

/**
 * Flesch reading ease and Flesch-Kincaid grade.
 * @returns null when there is no word or no sentence to judge
 * @source Flesch 1948, ease = 206.835 - 1.015 words/sentences - 84.6 syllables/words; Kincaid et al. 1975,
 *   grade = 0.39 words/sentences + 11.8 syllables/words - 15.59
 */
export function readability({ sentences, words, syllables }: ReadingCounts): Readability | null {
  if (!(sentences > 0) || !(words > 0)) return null;
  const [length, weight] = [words / sentences, syllables / words];
  return { ease: 206.835 - 1.015 * length - 84.6 * weight, grade: 0.39 * length + 11.8 * weight - 15.59 };
}

/**
 * Counts as Flesch made them: contractions, hyphenated words, numbers and symbols are one word each; numbers and symbols one syllable.
 * Breath marks are no words.
 */
export function readingCounts(text: string): ReadingCounts {
  const parts = stretchesOf(text).flatMap(sentencesOf);
  const tokens = text.split(/\s+/).filter((token) => /[\p{L}\p{N}%°&@+]/u.test(token));
  return {
    sentences: parts.filter((part) => /[\p{L}\p{N}]/u.test(part)).length,
    words: tokens.length,
    syllables: tokens.reduce((sum, token) => sum + (/\p{N}/u.test(token) ? 1 : Math.max(1, syllablesOf(token))), 0),
  };
}

/** How easy a text is to read; null for a text without words. */
export function readabilityOf(text: string): Readability | null {
  return readability(readingCounts(text));
}
