import { readFileSync } from "node:fs";
import { retext } from "retext";
import retextEquality from "retext-equality";
import retextIndefiniteArticle from "retext-indefinite-article";
import retextPassive from "retext-passive";
import retextReadability from "retext-readability";
import retextRepeatedWords from "retext-repeated-words";
import retextSimplify from "retext-simplify";
import { bench, describe } from "vitest";
import { readCue, type CueInput } from "../../shared/checks";
import { judgedLine, scoreCues, scoreTable, type LabelledLine } from "./cue-score";

interface CorpusLine extends LabelledLine, CueInput {}

/** The two files name the labels' key differently; the rest is the same. */
const linesOf = (path: string): CorpusLine[] =>
  readFileSync(new URL(path, import.meta.url), "utf8").trim().split("\n").map((row) => {
    const line = JSON.parse(row) as CorpusLine & { label?: string[] };
    return { ...line, labels: line.labels ?? line.label ?? [] };
  });

const read = (line: CorpusLine): string[] => readCue(line).map(({ label }) => label);

function report(name: string, lines: readonly CorpusLine[], withLines: boolean): void {
  const score = scoreCues(lines, read);
  const judged = withLines ? [...score.misses, ...score.falseAlarms].map(judgedLine) : [];
  console.log([scoreTable(name, score), ...judged].join("\n"));
}

const dev = linesOf("../unit/checks/cues-dev.jsonl");
report("Lines of other writers", dev, true);
// Counted only: whoever reads them has spent them.
report("Held-out lines", linesOf("../corpus/cues/held-out.jsonl"), false);

const prose = retext().use(retextEquality).use(retextIndefiniteArticle).use(retextPassive).use(retextReadability).use(retextRepeatedWords).use(retextSimplify);
const texts = linesOf("../../shared/checks/language/likeness/corpus/01.jsonl");
const words = texts.reduce((sum, { text }) => sum + text.split(/\s+/).length, 0);

/** Read the ratio: all labels of the reader against six general checks of prose, on the same lines. */
describe(`reading ${texts.length} lines, ${words} words`, () => {
  bench("the language reader", () => {
    for (const line of texts) readCue({ ...line });
  }, { iterations: 3, warmupIterations: 1 });
  bench("retext with six plugins", () => {
    for (const { text } of texts) prose.processSync(text);
  }, { iterations: 3, warmupIterations: 1 });
});
