import { blockName } from "../../../episode";
import { firstOfKind, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const openingFirst = defineRule({
  meta: {
    id: "opening-first", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "The opening is the first block.",
    why: "Viewers decide in the first seconds whether this is for them. What comes before the opening is seen by nobody who needed it.",
    source: PRACTICE,
    messages: { late: "{name} comes as block {number}, expected first. Move it up." },
  },
  check({ episode }, _options, report) {
    const opening = firstOfKind(episode, "opening");
    const at = opening ? episode.blocks.indexOf(opening) : 0;
    if (!opening || at === 0) return;
    report({
      block: opening, words: "order", message: "late", data: { name: blockName(opening), number: at + 1 },
      remedies: [{ label: `Moves ${blockName(opening)} to the top`, edits: [{ type: "move-block", block: opening.id, to: 0 }] }],
    });
  },
});
