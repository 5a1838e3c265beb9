import { blockName, newLine } from "../../../episode";
import { usualShot } from "../../../filming";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const exerciseShot = defineBlockRule({
  meta: {
    id: "exercise-shot", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "Every exercise has a shot.",
    why: "There is one take. What no shot names is not filmed.",
    source: PRACTICE,
    messages: { none: "{name}: no shot planned. Add at least one that shows the whole movement." },
  },
  check({ block, newId }, _options, report) {
    if (block.kind !== "exercise" || wordsOf(block, "shot").length > 0) return;
    const text = usualShot(block);
    report({
      block, words: "no shot", message: "none", data: { name: blockName(block) },
      remedies: [{ label: `Adds a shot: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "shot", text) }] }],
    });
  },
});
