import { syllable } from "syllable";
import { ENDINGS } from "./endings";
import { TRADE_WORDS } from "./trade-words";

function listed(word: string): number | null {
  if (Object.hasOwn(TRADE_WORDS, word)) return TRADE_WORDS[word] ?? null;
  const singular = word.replace(/'?s$/, "");
  return singular !== word && !/(?:[sxz]|[cs]h)e$/.test(singular) && Object.hasOwn(TRADE_WORDS, singular) ? (TRADE_WORDS[singular] ?? null) : null;
}

/** One word in lower case: the list first, then the endings, then the general counter. */
function count(word: string): number {
  const known = listed(word);
  if (known !== null) return known;
  const rule = ENDINGS.find(({ ending }) => ending.test(word));
  return rule ? count(word.slice(0, -rule.cut)) + rule.adds : Math.max(1, syllable(word));
}

/**
 * Syllables of one word as said; parts joined by hyphens add up. Case and punctuation do not matter.
 * @returns at least 1 for anything with a letter, 0 for anything without
 */
export function syllablesOf(word: string): number {
  const parts = word.toLowerCase().replace(/’/g, "'").split(/[^\p{L}\p{M}']+/u).map((part) => part.replace(/^'+|'+$/g, ""));
  return parts.filter((part) => /\p{L}/u.test(part)).reduce((sum, part) => sum + count(part), 0);
}
