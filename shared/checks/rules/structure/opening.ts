import { emptyBlock, episodeName, newLine } from "../../../episode";
import { exerciseBlocks, firstOfKind, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const opening = defineRule({
  meta: {
    id: "opening", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "An episode begins with an opening that says what it is for.",
    why: "The first seconds decide whether people stay, and they are the place to say who should ask a professional first.",
    source: PRACTICE,
    messages: { none: "No opening. Film a few seconds that say what {title} is for." },
  },
  check({ episode, newId }, _options, report) {
    if (exerciseBlocks(episode).length === 0 || firstOfKind(episode, "opening")) return;
    const block = emptyBlock(newId, "opening", {
      title: "Opening", minutes: 1,
      lines: [newLine(newId, "say", `Today: ${episodeName(episode)}. Start lighter than you see here, and ask a professional first if you have a condition.`), newLine(newId, "shot", "Three-quarter, medium, 10 s: to camera")],
    });
    report({
      words: "no opening", message: "none", data: { title: episode.title.trim() || "the episode" },
      remedies: [{ label: "Adds an opening block with a first sentence and a shot", edits: [{ type: "insert-block", at: 0, block }] }],
    });
  },
});
