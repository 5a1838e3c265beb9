import { readabilityOf } from "../../../speech";
import { wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";
import type { LineKind } from "../../../episode";

/** What the handout prints in sentences. */
const PRINTED: readonly LineKind[] = ["cue", "avoid", "caution"];

export const maxReadingGrade = defineRule({
  meta: {
    id: "max-reading-grade", version: 1, subject: "words", level: "consider", moment: "before publishing",
    summary: "The handout reads as easily as plain English.",
    why: "It is read between two sets, out of breath, by people for whom English may be a second language.",
    source: { title: "Flesch 1948; Kincaid et al. 1975", at: "grade; the aim of 8 is common practice" },
    defaults: { grade: 8, words: 60 },
    messages: { hard: "The handout's cues, faults and cautions read at grade {grade}, at most {max} expected. Shorter words and sentences." },
  },
  check({ episode }, { grade: max, words: fewest }, report) {
    const lines = episode.blocks.flatMap((block) => PRINTED.flatMap((kind) => wordsOf(block, kind).map(({ text }) => text.replace(/[.!?]?\s*$/, "."))));
    const text = lines.join(" ");
    if (text.split(/\s+/).length < fewest) return;
    const grade = readabilityOf(text)?.grade ?? 0;
    if (grade > max) report({ words: "reading grade", message: "hard", data: { grade: Math.round(grade * 10) / 10, max } });
  },
});
