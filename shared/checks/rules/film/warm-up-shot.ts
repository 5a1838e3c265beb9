import { blockName, newLine } from "../../../episode";
import { usualShot } from "../../../filming";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const warmUpShot = defineBlockRule({
  meta: {
    id: "warm-up-shot", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "The warm-up and the cool-down have a shot.",
    why: "They are what gets skipped on screen, and then at home.",
    source: PRACTICE,
    messages: { none: "{name}: no shot planned. Add one, so that viewers see it done." },
  },
  check({ block, newId }, _options, report) {
    if ((block.kind !== "warm-up" && block.kind !== "cool-down") || wordsOf(block, "shot").length > 0) return;
    const text = usualShot(block);
    report({
      block, words: "no shot", level: block.kind === "warm-up" ? "fix" : "consider", message: "none", data: { name: blockName(block) },
      remedies: [{ label: `Adds a shot: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "shot", text) }] }],
    });
  },
});
