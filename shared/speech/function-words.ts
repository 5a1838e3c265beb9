/** Small words that carry no stress of their own: articles, prepositions, pronouns, helping verbs, and what they grow together to. */
const FUNCTION_WORDS = new Set(
  `a an the of to in into on at for by from with and or but as so if than that this these those it its is are was were be been am i you he she we they
  me him her us them my your his our their do does did have has had will would can could shall should may might must not no nor there here what which
  who when where how then up out off it's that's there's here's you're they're we're i'm i've we've you've i'll we'll you'll they'll it'll i'd we'd
  you'd don't can't won't isn't aren't`.split(/\s+/),
);

/** True for a word a speaker passes over without stress. @param word - lower case */
export const isFunctionWord = (word: string): boolean => FUNCTION_WORDS.has(word);
