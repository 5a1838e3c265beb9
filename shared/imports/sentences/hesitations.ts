import type { Word } from "../types";

const SOUND = /^(?:u+h*m+|u+h+|e+r+m*|a+h+|h+m+|m+h*m+|mhm|erm+|uhh*|umm+)$/;

/** Is it such a sound? */
export const isHesitation = (plain: string): boolean => SOUND.test(plain);

/** The places of sounds that fill a pause and say nothing: "um", "uh", "er". "You know" and "like" are words and stay. */
export function hesitationsIn(words: readonly Word[]): Set<number> {
  return new Set(words.flatMap(({ plain }, at) => (isHesitation(plain) ? [at] : [])));
}
