import { blockName } from "../../../episode";
import { sentencesOf } from "../../../speech";
import { countWords, PRACTICE, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

const key = (sentence: string): string => sentence.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ").trim();

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
      for (const line of wordsOf(block, "say")) {
        for (const sentence of sentencesOf(line.text)) {
          if (countWords(sentence) < fewest) continue;
          const start = line.text.indexOf(sentence);
          const first = seen.get(key(sentence));
          if (first === undefined) seen.set(key(sentence), blockName(block));
          else report({ block, line, ...(start === -1 ? {} : { range: { start, end: start + sentence.length } }), message: "twice", data: { name: blockName(block), first } });
        }
      }
    }
  },
});
