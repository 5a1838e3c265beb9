import { blockName } from "../../../episode";
import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const closingLast = defineRule({
  meta: {
    id: "closing-last", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "The closing is the last block.",
    why: "A goodbye in the middle sends viewers away before the cool-down.",
    source: PRACTICE,
    messages: { early: "{name} comes as block {number} of {count}, expected last. Move it down." },
  },
  check({ episode }, _options, report) {
    const closing = episode.blocks.findLast((block) => block.kind === "closing");
    const last = episode.blocks.length - 1;
    const at = closing ? episode.blocks.indexOf(closing) : last;
    if (!closing || at === last) return;
    report({
      block: closing, words: "order", message: "early", data: { name: blockName(closing), number: at + 1, count: last + 1 },
      remedies: [{ label: `Moves ${blockName(closing)} to the end`, edits: [{ type: "move-block", block: closing.id, to: last }] }],
    });
  },
});
