import { syllable } from "syllable";
import { consonantsBySpelling } from "./consonants";
import { ENDINGS } from "./endings";
import { TRADE_WORDS } from "./trade-words";

/** What is heard of one word: vowels, each the heart of a syllable, and the consonants around them. */
export interface Sounds {
  readonly syllables: number;
  readonly consonants: number;
}

function listed(word: string): number | null {
  if (Object.hasOwn(TRADE_WORDS, word)) return TRADE_WORDS[word] ?? null;
  const singular = word.replace(/'?s$/, "");
  return singular !== word && !/(?:[sxz]|[cs]h)e$/.test(singular) && Object.hasOwn(TRADE_WORDS, singular) ? (TRADE_WORDS[singular] ?? null) : null;
}

/** Syllables of one word in lower case: the trade's list first, then the endings, then the general counter. */
function syllablesBySpelling(word: string): number {
  const known = listed(word);
  if (known !== null) return known;
  const rule = ENDINGS.find(({ ending }) => ending.test(word));
  return rule ? syllablesBySpelling(word.slice(0, -rule.cut)) + rule.adds : Math.max(1, syllable(word));
}

/** True when the trade's own list says how many syllables the word has; no dictionary overrules it. */
export const isTradeWord = (word: string): boolean => listed(word) !== null;

/** The sounds of any word, by its spelling. @param word - lower case, letters and apostrophes only, at least one letter */
export const soundsBySpelling = (word: string): Sounds => ({ syllables: syllablesBySpelling(word), consonants: consonantsBySpelling(word) });
