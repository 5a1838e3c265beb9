import { blockName, newLine } from "../../../episode";
import { usualShot } from "../../../filming";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const openingShot = defineBlockRule({
  meta: {
    id: "opening-shot", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "The opening has a shot.",
    why: "The first picture is filmed when nobody is warm and everybody forgets it.",
    source: PRACTICE,
    messages: { none: "{name}: no shot planned. Add one to camera before you start." },
  },
  check({ block, newId }, _options, report) {
    if (block.kind !== "opening" || wordsOf(block, "shot").length > 0) return;
    const text = usualShot(block);
    report({
      block, words: "no shot", message: "none", data: { name: blockName(block) },
      remedies: [{ label: `Adds a shot: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "shot", text) }] }],
    });
  },
});
