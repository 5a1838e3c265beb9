import { newLine } from "../../../episode";
import { exerciseBlocks, firstOfKind } from "../../blocks";
import { defineRule } from "../../define-rule";

const ADULT = /\b(?:adult|teacher|coach|trainer|parent|supervis\w+|grown-?up)\b/i;

export const teenAdult = defineRule({
  meta: {
    id: "teen-adult", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "An episode for teenagers says that an adult who knows the movements should be there.",
    why: "Lifting is safe for the young when somebody qualified watches. A video is nobody.",
    source: { title: "Faigenbaum et al., NSCA youth resistance training statement, J Strength Cond Res 23(5 Suppl), 2009", at: "qualified instruction and supervision" },
    messages: { unsaid: "The episode addresses teenagers, and no spoken line or caution asks for an adult beside them. Say it once." },
  },
  check({ episode, newId }, _options, report) {
    if (!episode.audience.groups.includes("teen") || exerciseBlocks(episode).length === 0) return;
    if (episode.blocks.some(({ lines }) => lines.some(({ kind, text }) => (kind === "say" || kind === "caution") && ADULT.test(text)))) return;
    const into = firstOfKind(episode, "opening") ?? episode.blocks[0];
    const text = "Train with an adult beside you who knows these movements.";
    report({ words: "no adult", message: "unsaid", remedies: into ? [{ label: `Says: ${text}`, edits: [{ type: "insert-line", block: into.id, at: null, line: newLine(newId, "say", text) }] }] : [] });
  },
});
