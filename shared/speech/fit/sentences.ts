import { linesOf, type Block } from "../../episode";
import { isFunctionWord } from "../function-words";
import { sentencesOf, stretchesOf } from "../sentences";
import { saidWords } from "../said-words";
import type { Pace } from "../types";
import { mustStay } from "./cautions";

/** One sentence of a block's voiceover. */
export interface SaySentence {
  readonly line: string;
  readonly text: string;
  /** Where it begins in its line; -1 where the line writes it with other spaces. */
  readonly at: number;
  readonly words: number;
  /** The time it takes in its block, the pause after it left out. */
  readonly seconds: number;
  /** The longest run of it without a pause. Seconds. */
  readonly breathless: number;
  /** Stems of the words that carry meaning. */
  readonly stems: ReadonlySet<string>;
  /** Negations, warnings, disclosures, and parts of a sentence that a breath mark divides: never proposed for cutting, nor cut into. */
  readonly kept: boolean;
}

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

const ends = (text: string | undefined): boolean => text === undefined || /[.!?…]['"’”)\]]*$/.test(text);
/** False for a piece whose sentence goes on beyond a breath mark: "Do not / lock the elbows." is one. */
const isWhole = (pieces: readonly string[], at: number): boolean => ends(pieces[at - 1]) && (ends(pieces[at]) || at === pieces.length - 1);

/** All that is said in a block, sentence by sentence. */
export function saySentences(block: Block, pace: Pace): SaySentence[] {
  return linesOf(block, "say").flatMap((line) => {
    let from = 0;
    return sentencesOfLine(line.text).map((text, nth, all) => {
      const at = line.text.indexOf(text, from);
      if (at >= 0) from = at + text.length;
      const words = saidWords(text, pace);
      const seconds = words.reduce((sum, word, index) => sum + word.seconds + (index < words.length - 1 ? word.pauseSeconds : 0), 0);
      return { line: line.id, text, at, words: words.length, seconds, breathless: longestRun(text, pace), stems: stemsOf(text), kept: mustStay(text) || !isWhole(all, nth) };
    });
  });
}
