import { blockName, memoOn, type Block, type Line } from "../../../episode";
import { sentencesOf } from "../../../speech";
import { countWords, PRACTICE, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

interface SaidSentence {
  readonly line: Line;
  readonly sentence: string;
  /** The sentence without case and punctuation. */
  readonly key: string;
  readonly words: number;
}

const saidIn = memoOn((block: Block): readonly SaidSentence[] =>
  wordsOf(block, "say").flatMap((line) => sentencesOf(line.text).map((sentence) => ({
    line, sentence, key: sentence.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ").trim(), words: countWords(sentence),
  }))));

export const noRepeatedSentence = defineRule({
  meta: {
    id: "no-repeated-sentence", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "No sentence is spoken twice.",
    why: "The second time it costs seconds and says nothing.",
    source: PRACTICE,
    defaults: { words: 5 },
    messages: { twice: "{name} repeats a sentence from {first}. Cut it, or say it another way." },
  },
  check({ episode }, { words: fewest }, report) {
    const seen = new Map<string, string>();
    for (const block of episode.blocks) {
      for (const { line, sentence, key, words } of saidIn(block)) {
        if (words < fewest) continue;
        const first = seen.get(key);
        const start = line.text.indexOf(sentence);
        if (first === undefined) seen.set(key, blockName(block));
        else report({ block, line, ...(start === -1 ? {} : { range: { start, end: start + sentence.length } }), message: "twice", data: { name: blockName(block), first } });
      }
    }
  },
});
