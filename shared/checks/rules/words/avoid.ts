import { blockName, newLine } from "../../../episode";
import { exerciseOf, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const avoid = defineBlockRule({
  meta: {
    id: "avoid", version: 1, subject: "words", level: "consider", moment: "before filming",
    summary: "Every exercise names one fault and what to do instead.",
    why: "People recognise their own mistake faster than they follow a new instruction.",
    source: PRACTICE,
    messages: { none: "{name}: no fault to avoid. Name the usual one and what to do instead." },
  },
  check({ block, newId }, _options, report) {
    if (block.kind !== "exercise" || wordsOf(block, "avoid").length > 0) return;
    const faults = exerciseOf(block)?.avoid ?? [];
    report({
      block, words: "no fault named", message: "none", data: { name: blockName(block) },
      remedies: faults.slice(0, 2).map(({ text, instead }) => ({ label: `Adds: ${text}: ${instead}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "avoid", `${text}: ${instead}`) }] })),
    });
  },
});
