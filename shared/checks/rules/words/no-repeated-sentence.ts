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
    id: "no-repeated-sentence", version: 2, subject: "words", level: "consider", moment: "before speaking",
    summary: "No sentence is spoken twice.",
    why: "The second time it costs seconds and says nothing.",
    source: PRACTICE,
    defaults: { words: 5 },
    messages: {
      twice: "{name} repeats a sentence from {first}. Cut it, or say it another way.",
      often: "{name} repeats a sentence from {first}, and so do {more} more lines. Cut it, or say it another way.",
    },
  },
  check({ episode }, { words: fewest }, report) {
    const seen = new Map<string, { first: string; again: { block: Block; said: SaidSentence }[] }>();
    for (const block of episode.blocks) {
      for (const said of saidIn(block)) {
        if (said.words < fewest) continue;
        const known = seen.get(said.key);
        if (known) known.again.push({ block, said });
        else seen.set(said.key, { first: blockName(block), again: [] });
      }
    }
    for (const { first, again: [next, ...others] } of seen.values()) {
      if (!next) continue;
      const { block, said: { line, sentence } } = next;
      const start = line.text.lastIndexOf(sentence);
      const place = { block, line, ...(start === -1 ? {} : { range: { start, end: start + sentence.length } }) };
      if (others.length === 0) report({ ...place, message: "twice", data: { name: blockName(block), first } });
      else report({ ...place, message: "often", data: { name: blockName(block), first, more: others.length } });
    }
  },
});
