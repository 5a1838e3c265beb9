import { newLine } from "../../../episode";
import { exerciseBlocks, firstOfKind } from "../../blocks";
import { defineRule } from "../../define-rule";

/** Somebody who can look at the viewer. */
const SOMEBODY = /\b(?:doctor|physician|gp|midwife|physio(?:therapist)?|health professional|clinician|nurse|qualified (?:coach|trainer)|coach|trainer|professional)\b/i;

export const askAProfessional = defineRule({
  meta: {
    id: "ask-a-professional", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "The episode says whom to ask before starting or when something hurts.",
    why: "The handout carries it, and most viewers never open the handout.",
    source: { title: "Riebe et al., ACSM pre-participation screening, Med Sci Sports Exerc 47(11), 2015", at: "clearance before exercise with disease, signs or symptoms; the spoken line is common practice" },
    messages: { unsaid: "No spoken line and no caution sends anybody to a doctor or a qualified coach. Say it once." },
  },
  check({ episode, newId }, _options, report) {
    if (exerciseBlocks(episode).length === 0) return;
    if (episode.blocks.some((block) => block.lines.some(({ kind, text }) => (kind === "say" || kind === "caution") && SOMEBODY.test(text)))) return;
    const into = firstOfKind(episode, "opening") ?? episode.blocks[0];
    const text = "Ask a doctor or a qualified coach first if you are unwell, pregnant, or have not trained for a while";
    report({
      words: "nobody to ask", message: "unsaid",
      remedies: into ? [{ label: `Adds a caution: ${text}`, edits: [{ type: "insert-line", block: into.id, at: null, line: newLine(newId, "caution", text) }] }] : [],
    });
  },
});
