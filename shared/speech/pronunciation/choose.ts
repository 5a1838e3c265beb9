import { isTradeWord, soundsBySpelling, type Sounds } from "./rule";

/** The rule may miss one consonant: it moves a word's length by a tenth of a second at most. */
const CONSONANTS_MISSED = 1;

/** A pronunciation in the dictionary's notation: sounds apart by spaces, every vowel with its stress figure ("B AA1 R B EH2 L"). */
function soundsOfPronunciation(pronunciation: string): Sounds {
  const sounds = pronunciation.split(" ");
  const syllables = sounds.filter((sound) => /\d$/.test(sound)).length;
  return { syllables, consonants: sounds.length - syllables };
}

/**
 * The words the spelling rule gets wrong, with the dictionary's answer: what the shipped table holds.
 *
 * A word of several pronunciations is right when the rule finds the syllables of any; of the wrong ones the first counts.
 * @param words - the words worth knowing, lower case
 * @param pronunciationsOf - a word's pronunciations, the usual one first; empty when the dictionary has none
 * @returns words by their sounds, "syllables consonants", in alphabetical order
 */
export function chooseWords(words: readonly string[], pronunciationsOf: (word: string) => readonly string[]): Record<string, string> {
  const groups = new Map<string, string[]>();
  for (const word of [...new Set(words)].filter((one) => /^[a-z]{2,}$/.test(one) && !isTradeWord(one)).sort()) {
    const rule = soundsBySpelling(word);
    const known = pronunciationsOf(word).map(soundsOfPronunciation).filter(({ syllables }) => syllables > 0);
    const right = known.find(({ syllables }) => syllables === rule.syllables) ?? known[0];
    if (!right || (right.syllables === rule.syllables && Math.abs(right.consonants - rule.consonants) <= CONSONANTS_MISSED)) continue;
    const key = `${right.syllables} ${right.consonants}`;
    groups.set(key, [...(groups.get(key) ?? []), word]);
  }
  return Object.fromEntries([...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, list]) => [key, list.join(" ")]));
}
