import { blockName, newLine } from "../../../episode";
import { exerciseOf, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const caution = defineBlockRule({
  meta: {
    id: "caution", version: 1, subject: "words", level: "fix", moment: "before filming",
    summary: "Every exercise has a caution.",
    why: "One sentence on when to stop or go lighter is all the supervision most viewers get. It stands on the handout beside the exercise.",
    source: PRACTICE,
    messages: { none: "{name}: no caution. Say when to stop, go lighter or leave it out." },
  },
  check({ block, newId }, _options, report) {
    if (block.kind !== "exercise" || wordsOf(block, "caution").length > 0) return;
    const texts = exerciseOf(block)?.cautions ?? [];
    report({
      block, words: "no caution", message: "none", data: { name: blockName(block) },
      remedies: texts.slice(0, 2).map((text) => ({ label: `Adds: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "caution", text) }] })),
    });
  },
});
