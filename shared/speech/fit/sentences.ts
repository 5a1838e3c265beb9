import { linesOf, type Block } from "../../episode";
import { isFunctionWord } from "../function-words";
import { sentencesOf, stretchesOf } from "../sentences";
import { saidWords } from "../said-words";
import type { Pace } from "../types";

/** One sentence of a block's voiceover. */
export interface SaySentence {
  readonly line: string;
  readonly text: string;
  readonly words: number;
  /** The time it takes in its block, the pause after it left out. */
  readonly seconds: number;
  /** The longest run of it without a pause. Seconds. */
  readonly breathless: number;
  /** Stems of the words that carry meaning. */
  readonly stems: ReadonlySet<string>;
  /** Warnings, doctors, disclosures: never proposed for cutting. */
  readonly kept: boolean;
}

/** What protects people or keeps the law stays, whatever the clip. */
const KEPT = /\b(?:pain\w*|hurts?|injur\w*|dizz\w*|doctor|physician|physio\w*|midwife|stop (?:at once|the set|if)|spotter|safety|careful|caution|warning|ad|advert\w*|paid|sponsor\w*|partner\w*|gift\w*|affiliate)\b/i;

const stem = (word: string): string => word.replace(/'s$/, "").replace(/(?<=[a-z]{3})(?:ing|ed|es|s|ly)$/, "").replace(/(?<=[a-z]{3})(.)\1$/, "$1").replace(/(?<=[a-z]{3})e$/, "");

/** Stems of the words of a text that carry meaning. */
export function stemsOf(text: string): Set<string> {
  const words = text.toLowerCase().replace(/’/g, "'").match(/[\p{L}][\p{L}']*/gu) ?? [];
  return new Set(words.filter((word) => !isFunctionWord(word)).map(stem));
}

/** The seconds of a text's longest run without a pause. */
function longestRun(text: string, pace: Pace): number {
  let [longest, run] = [0, 0];
  for (const { seconds, pauseSeconds } of saidWords(text, pace)) {
    run += seconds;
    longest = Math.max(longest, run);
    if (pauseSeconds > 0) run = 0;
  }
  return longest;
}

/** The sentences of one line; breath marks at their ends are left out. */
export const sentencesOfLine = (text: string): string[] => stretchesOf(text).flatMap(sentencesOf);

/** All that is said in a block, sentence by sentence. */
export function saySentences(block: Block, pace: Pace): SaySentence[] {
  return linesOf(block, "say").flatMap((line) =>
    sentencesOfLine(line.text).map((text) => {
      const words = saidWords(text, pace);
      const seconds = words.reduce((sum, word, at) => sum + word.seconds + (at < words.length - 1 ? word.pauseSeconds : 0), 0);
      return { line: line.id, text, words: words.length, seconds, breathless: longestRun(text, pace), stems: stemsOf(text), kept: KEPT.test(text) };
    }),
  );
}
