import type { Word } from "../types";

const SOUND = /^(?:u+h*m+|u+h+|e+r+m*|a+h+|h+m+|m+h*m+|mhm|erm+|uhh*|umm+)$/;

/** The places of sounds that fill a pause and say nothing: "um", "uh", "er". "You know" and "like" are words and stay. */
export function hesitationsIn(words: readonly Word[]): Set<number> {
  return new Set(words.flatMap(({ plain }, at) => (SOUND.test(plain) ? [at] : [])));
}
