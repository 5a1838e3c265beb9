import { analyse, readGrammar } from "../grammar";
import { CUE_LABELS, type CueLabelName, type JudgedLine } from "../types";
import { featuresOf } from "./features";
import { LESSONS, prohibitions } from "./lessons";
import type { LikenessModel } from "./model";
import { train } from "./train";

/** What weights.json holds: the model, and the lines that show what each label means. */
export interface Trained extends LikenessModel {
  /** Of the corpus it was trained on. */
  readonly digest: string;
  /** Judged lines by label, one a line. */
  readonly lines: Readonly<Record<CueLabelName, string>>;
}

/** A short sum over all lines and their labels, to tell whether weights belong to a corpus (FNV-1a, 32 bits). */
export function digestOf(lines: readonly JudgedLine[]): string {
  let sum = 0x811c9dc5;
  for (const { text, family, audience, labels } of lines) {
    for (const char of `${text}|${family}|${audience}|${labels.join()}\n`) sum = Math.imul(sum ^ (char.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  }
  return `${lines.length}-${sum.toString(16)}`;
}

/**
 * Trains the likeness reader on a corpus, on what the catalogue and the patterns already say, and on prohibitions of plain
 * faults. The same lines in the same order give the same result.
 *
 * The grammar reader's answers are among the features, so train again when its patterns change.
 */
export function trainedOn(lines: readonly JudgedLine[]): Trained {
  const model = train([...lines, ...LESSONS, ...prohibitions(lines)].map((line) => {
    const text = analyse(line.text);
    return { features: featuresOf(text, line, readGrammar(text, line)), labels: line.labels };
  }));
  const shown = CUE_LABELS.map((label) => [label, lines.filter(({ labels }) => labels.length === 1 && labels[0] === label).map(({ text }) => text).join("\n")]);
  return { digest: digestOf(lines), ...model, lines: Object.fromEntries(shown) as Record<CueLabelName, string> };
}
