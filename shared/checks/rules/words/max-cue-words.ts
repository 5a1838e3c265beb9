import { blockName } from "../../../episode";
import { countWords, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const maxCueWords = defineBlockRule({
  meta: {
    id: "max-cue-words", version: 1, subject: "words", level: "consider", moment: "before filming",
    summary: "A cue is short enough to be followed while lifting.",
    why: "People under load take in one short instruction at a time.",
    source: PRACTICE,
    defaults: { max: 12 },
    messages: { long: "{name}: a cue has {words} words, at most {max} expected. Split it, or move the reason into the voiceover." },
  },
  check({ block }, { max }, report) {
    // Warm-up and cool-down cues are lists of things to do, read beforehand.
    if (block.kind !== "exercise") return;
    for (const line of wordsOf(block, "cue")) {
      const words = countWords(line.text);
      if (words > max) report({ block, line, message: "long", data: { name: blockName(block), words, max } });
    }
  },
});
