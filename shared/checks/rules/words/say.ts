import { blockName } from "../../../episode";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const say = defineBlockRule({
  meta: {
    id: "say", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "Every exercise has words to speak.",
    why: "A movement without a word is copied without its caution.",
    source: PRACTICE,
    messages: { none: "{name}: nothing to say yet. Write what you would tell somebody beside you." },
  },
  check({ block }, _options, report) {
    if (block.kind === "exercise" && wordsOf(block, "say").length === 0) report({ block, words: "no words", message: "none", data: { name: blockName(block) } });
  },
});
