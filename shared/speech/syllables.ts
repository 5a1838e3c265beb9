import { syllable } from "syllable";
import { TRADE_WORDS } from "./trade-words";

function known(word: string): number | null {
  if (Object.hasOwn(TRADE_WORDS, word)) return TRADE_WORDS[word] ?? null;
  const singular = /(?:[sxz]|[cs]h)es$/.test(word) ? null : word.replace(/'?s$/, "");
  return singular !== null && singular !== word && Object.hasOwn(TRADE_WORDS, singular) ? (TRADE_WORDS[singular] ?? null) : null;
}

/**
 * Syllables of one word as said; parts joined by hyphens add up. Case and punctuation do not matter.
 * @returns at least 1 for anything with a letter, 0 for anything without
 */
export function syllablesOf(word: string): number {
  const parts = word.toLowerCase().replace(/’/g, "'").split(/[^\p{L}\p{M}']+/u).filter((part) => /\p{L}/u.test(part));
  return parts.reduce((sum, part) => {
    const bare = part.replace(/^'+|'+$/g, "");
    return sum + (known(bare) ?? Math.max(1, syllable(bare)));
  }, 0);
}
