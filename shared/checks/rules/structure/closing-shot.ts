import { blockName, newLine } from "../../../episode";
import { usualShot } from "../../../filming";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const closingShot = defineBlockRule({
  meta: {
    id: "closing-shot", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "The closing has a shot.",
    why: "A closing without a shot on the list goes home unfilmed.",
    source: PRACTICE,
    messages: { none: "{name}: no shot planned. Add one of about 12 s, so that there is a picture for the last words." },
  },
  check({ block, newId }, _options, report) {
    if (block.kind !== "closing" || wordsOf(block, "shot").length > 0) return;
    const text = usualShot(block);
    report({
      block, words: "no shot", message: "none", data: { name: blockName(block) },
      remedies: [{ label: `Adds a shot: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "shot", text) }] }],
    });
  },
});
