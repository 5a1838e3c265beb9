import { soundsOf } from "./pronunciation";

/**
 * Syllables of one word as said; parts joined by hyphens add up. Case and punctuation do not matter.
 * @returns at least 1 for anything with a letter, 0 for anything without
 */
export const syllablesOf = (word: string): number => soundsOf(word).syllables;
