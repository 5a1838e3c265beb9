import { soundsBySpelling, type Sounds } from "./rule";
import table from "./table.json";

export type { Sounds } from "./rule";

/**
 * Words the spelling rule gets wrong, from the CMU Pronouncing Dictionary; table.json carries its notice. Made by
 * electron/start-up/pronunciation.mjs, never by hand.
 */
const TABLE: ReadonlyMap<string, Sounds> = new Map(
  Object.entries(table.words).flatMap(([key, words]) => {
    const [syllables = 1, consonants = 0] = key.split(" ").map(Number);
    return words.split(" ").map((word) => [word, { syllables, consonants }] as const);
  }),
);

/** Answers kept: a book of text has fewer different words, a hostile one must not fill the memory. */
const MOST_KEPT = 20_000;
const kept = new Map<string, Sounds>();

const NOTHING: Sounds = { syllables: 0, consonants: 0 };

function soundsOfPart(part: string): Sounds {
  const known = kept.get(part);
  if (known) return known;
  const sounds = TABLE.get(part) ?? TABLE.get(part.replace(/'s?$/, "")) ?? soundsBySpelling(part);
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(part, sounds);
  return sounds;
}

/** The parts of a word that are joined by hyphens and other marks, in lower case. */
export function partsOf(word: string): string[] {
  return word.toLowerCase().replace(/’/g, "'").split(/[^\p{L}\p{M}']+/u).map((part) => part.replace(/^'+|'+$/g, "")).filter((part) => /\p{L}/u.test(part));
}

/**
 * What is heard of one word; parts joined by hyphens add up. Case and punctuation do not matter.
 * @returns at least one syllable for anything with a letter, none for anything without
 */
export function soundsOf(word: string): Sounds {
  return partsOf(word).map(soundsOfPart).reduce((sum, { syllables, consonants }) => ({ syllables: sum.syllables + syllables, consonants: sum.consonants + consonants }), NOTHING);
}
