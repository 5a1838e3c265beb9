import { SENSES } from "./thesaurus";

interface Worded {
  readonly word: string;
  readonly lemma: string;
}

interface Phrase {
  readonly rest: readonly string[];
  readonly sense: string;
}

const byWord = new Map<string, string[]>();
const byFirstWord = new Map<string, Phrase[]>();
const into = <Value>(map: Map<string, Value[]>, key: string, value: Value): void => {
  const known = map.get(key);
  if (known) known.push(value);
  else map.set(key, [value]);
};
for (const [sense, words] of Object.entries(SENSES)) {
  for (const entry of words.split(" ")) {
    const [first = "", ...rest] = entry.split("_");
    if (rest.length === 0) into(byWord, first, sense);
    else into(byFirstWord, first, { rest, sense });
  }
}

const ENDINGS: readonly (readonly [ending: string, instead: string])[] = [["'s", ""], ["ies", "y"], ["es", ""], ["s", ""], ["ing", ""], ["ing", "e"], ["ed", ""], ["ed", "e"]];

/** The senses of one word, by its own form, its lemma, or its form without a common ending. */
function sensesOfWord({ word, lemma }: Worded): readonly string[] {
  const own = byWord.get(word) ?? byWord.get(lemma);
  if (own) return own;
  for (const [ending, instead] of ENDINGS) {
    const found = word.endsWith(ending) && word.length - ending.length >= 3 ? byWord.get(word.slice(0, -ending.length) + instead) : undefined;
    if (found) return found;
  }
  return [];
}

/** The senses at each word of a text; a phrase counts at its first word. */
export function sensesOf(tokens: readonly Worded[]): (readonly string[])[] {
  return tokens.map((token, at) => {
    const single = sensesOfWord(token);
    const phrases = (byFirstWord.get(token.word) ?? []).filter(({ rest }) => rest.every((word, i) => tokens[at + 1 + i]?.word === word));
    return phrases.length === 0 ? single : [...new Set([...single, ...phrases.map(({ sense }) => sense)])];
  });
}
