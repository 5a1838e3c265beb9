import { MAX_TEXT, linesOf, type Block, type Edit } from "../../episode";
import { breaths } from "../breaths";
import { DEFAULT_PACE } from "../pace";
import type { Pace } from "../types";

/**
 * A text with a breath mark ( / ) wherever one is needed so that no stretch is longer than a breath. Words and marks that are
 * there stay; single spaces between words.
 * @param maxSeconds - how long a breath lasts; left out, the usual length of `breaths`
 */
export function withBreathMarks(text: string, pace: Pace = DEFAULT_PACE, maxSeconds?: number): string {
  return breaths(text, pace, maxSeconds)
    .map(({ text: words, breathAfter }) => (breathAfter === "suggested" || breathAfter === "marked" ? `${words} /` : words))
    .join(" ");
}

/** Marks the breaths of a block's say lines where they are missing: one edit a line that needs it. */
export function breathEdits(block: Block, pace: Pace, maxSeconds?: number): Edit[] {
  return linesOf(block, "say").flatMap(({ id, text }): Edit[] => {
    if (!breaths(text, pace, maxSeconds).some(({ breathAfter }) => breathAfter === "suggested")) return [];
    const marked = withBreathMarks(text, pace, maxSeconds);
    return marked.length <= MAX_TEXT ? [{ type: "set-line", line: id, fields: { text: marked } }] : [];
  });
}
