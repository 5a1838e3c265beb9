import { blockName, newLine } from "../../../episode";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

const TEXTS = { "warm-up": "Front, full, 15 s: the circles, one joint after the other", "cool-down": "Side, wide, 12 s: walking, then lying down" } as const;

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
    const text = TEXTS[block.kind];
    report({
      block, words: "no shot", level: block.kind === "warm-up" ? "fix" : "consider", message: "none", data: { name: blockName(block) },
      remedies: [{ label: `Adds a shot: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "shot", text) }] }],
    });
  },
});
