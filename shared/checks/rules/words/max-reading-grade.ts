import { memoOn, type Block, type LineKind } from "../../../episode";
import { readability, readingCounts, type ReadingCounts } from "../../../speech";
import { wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

/** What the handout prints in sentences. */
const PRINTED: readonly LineKind[] = ["cue", "avoid", "caution"];

/** What the formula counts in a block's printed lines; each line is a sentence. */
const countsOf = memoOn((block: Block): ReadingCounts =>
  readingCounts(PRINTED.flatMap((kind) => wordsOf(block, kind).map(({ text }) => text.replace(/[.!?]?\s*$/, "."))).join(" ")));

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
    const counts = episode.blocks.map(countsOf).reduce((sum, each) => ({ sentences: sum.sentences + each.sentences, words: sum.words + each.words, syllables: sum.syllables + each.syllables }), { sentences: 0, words: 0, syllables: 0 });
    if (counts.words < fewest) return;
    const grade = readability(counts)?.grade ?? 0;
    if (grade > max) report({ words: "reading grade", message: "hard", data: { grade: Math.round(grade * 10) / 10, max } });
  },
});
