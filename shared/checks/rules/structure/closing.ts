import { emptyBlock, newLine } from "../../../episode";
import { usualShot } from "../../../filming";
import { exerciseBlocks, firstOfKind, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const closing = defineRule({
  meta: {
    id: "closing", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "An episode ends with a closing.",
    why: "The closing is the part most often forgotten on the floor, and it cannot be filmed at home.",
    source: PRACTICE,
    messages: { none: "No closing. Plan a last sentence to camera before you leave the gym." },
  },
  check({ episode, newId }, _options, report) {
    if (exerciseBlocks(episode).length === 0 || firstOfKind(episode, "closing")) return;
    const block = emptyBlock(newId, "closing", {
      title: "Closing", minutes: 1,
      lines: [newLine(newId, "say", "That was today. Start lighter than I did, and ask somebody who can look at you if something hurts."), newLine(newId, "shot", usualShot({ kind: "closing" }))],
    });
    report({ words: "no closing", message: "none", remedies: [{ label: "Adds a closing block with a last sentence and a shot", edits: [{ type: "insert-block", at: null, block }] }] });
  },
});
