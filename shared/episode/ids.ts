/** Makes ids nobody has used yet; the caller brings the randomness. */
export type NewId = () => string;

const ALPHABET = "abcdefghjkmnpqrstuvwxyz23456789";

/**
 * An id maker over a source of random numbers.
 * @param random - uniform in [0, 1), such as Math.random
 * @returns a function giving 10-character ids (about 49 bits: two collide in none of a coach's lifetimes)
 */
export function idMaker(random: () => number): NewId {
  return () => Array.from({ length: 10 }, () => ALPHABET[Math.floor(random() * ALPHABET.length)]).join("");
}

/** Ids in sequence with a prefix, for demos and tests: `prefix1`, `prefix2`. */
export function countingIds(prefix: string): NewId {
  let next = 0;
  return () => `${prefix}${++next}`;
}
