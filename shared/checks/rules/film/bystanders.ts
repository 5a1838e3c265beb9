import { newLine } from "../../../episode";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

const SETTLED = /\b(?:front desk|permission|allowed|consent|in (?:the )?frame|other (?:people|members)|bystanders?|faces|release|empty (?:room|gym))\b/i;

export const bystanders = defineRule({
  meta: {
    id: "bystanders", version: 1, subject: "film", level: "consider", moment: "before filming",
    summary: "A note settles the gym's permission and who may be in frame.",
    why: "People train there who did not ask to be filmed, and most gyms have a rule about it.",
    source: PRACTICE,
    messages: { unsettled: "No note on permission or on other people in frame. Ask the front desk and write down what was agreed." },
  },
  check({ episode, newId }, _options, report) {
    const first = episode.blocks[0];
    if (!first || episode.session.place.trim() === "" || !episode.blocks.some((block) => wordsOf(block, "shot").length > 0)) return;
    if (episode.blocks.some((block) => wordsOf(block, "note").some(({ text }) => SETTLED.test(text)))) return;
    const text = "Ask the front desk before filming. Nobody else in frame without a yes.";
    report({ block: first, words: "no note", message: "unsettled", remedies: [{ label: `Adds a note: ${text}`, edits: [{ type: "insert-line", block: first.id, at: null, line: newLine(newId, "note", text) }] }] });
  },
});
