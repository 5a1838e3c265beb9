import { isNumberWord } from "../numbers";

/** Words that make two sentences differ although everything else in them is the same. */
const PAIRS: readonly (readonly [string, string])[] = [
  ["left", "right"], ["up", "down"], ["in", "out"], ["inside", "outside"], ["above", "below"], ["over", "under"], ["before", "after"], ["first", "last"], ["forward", "back"],
  ["front", "rear"], ["front", "back"], ["high", "low"], ["higher", "lower"], ["raise", "lower"], ["lift", "lower"], ["push", "pull"], ["top", "bottom"], ["inhale", "exhale"],
  ["wide", "narrow"], ["wider", "narrower"], ["fast", "slow"], ["faster", "slower"], ["quickly", "slowly"], ["heavy", "light"], ["heavier", "lighter"], ["more", "less"], ["more", "fewer"],
  ["long", "short"], ["longer", "shorter"], ["open", "close"], ["bent", "straight"], ["bend", "straighten"], ["always", "sometimes"], ["add", "take"], ["near", "far"], ["on", "off"],
];

const wordsOf = (text: string): Set<string> => new Set(text.toLowerCase().match(/\p{L}+|\d+(?:[.,]\d+)?/gu) ?? []);

/** True when a sentence has a number the other has not, or the opposite of one of its words: then it is no repetition of it. */
export function isOpposed(sentence: string, other: string): boolean {
  const [mine, theirs] = [wordsOf(sentence), wordsOf(other)];
  const hasOnly = (word: string, has: ReadonlySet<string>, lacks: ReadonlySet<string>): boolean => has.has(word) && !lacks.has(word);
  return [...mine].some((word) => isNumberWord(word) && !theirs.has(word)) ||
    PAIRS.some(([one, two]) => (hasOnly(one, mine, theirs) && hasOnly(two, theirs, mine)) || (hasOnly(two, mine, theirs) && hasOnly(one, theirs, mine)));
}
