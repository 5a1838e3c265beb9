import { linesOf, type Block, type Line } from "../episode";
import { HANDLE_SECONDS } from "./screen-clock";
import { speakLine } from "./speak-line";
import type { MeasuredSeconds, Pace } from "./types";

/** A say line with words in it, and when it is spoken if the pace, or what was measured, holds. */
export interface SpokenLine {
  readonly line: Line;
  /** Seconds from the start of its block's picture. */
  readonly from: number;
  readonly seconds: number;
}

/** Seconds from a block's first word to its last, a sentence's pause between lines. */
export const spokenSeconds = (lines: readonly SpokenLine[]): number => {
  const [first, last] = [lines[0], lines.at(-1)];
  return first && last ? last.from + last.seconds - first.from : 0;
};

/**
 * A block's say lines on its picture: half the handles lead in when there is room for them, less when the picture is short.
 * Words longer than the picture begin with it and run over its end.
 * @param length - of the picture, seconds
 * @param measured - by line id, lines whose seconds are known and need not be counted
 */
export function spokenLines(block: Block, length: number, pace: Pace, measured?: MeasuredSeconds): SpokenLine[] {
  const said = linesOf(block, "say").map((line) => ({ line, ...speakLine(line, pace) })).filter(({ words }) => words > 0)
    .map(({ line, seconds }) => ({ line, seconds: measured?.get(line.id)?.seconds ?? seconds }));
  const all = said.reduce((sum, { seconds }) => sum + seconds, 0) + pace.sentenceSeconds * Math.max(0, said.length - 1);
  let from = Math.max(0, Math.min(HANDLE_SECONDS / 2, (length - all) / 2));
  return said.map(({ line, seconds }) => {
    const spoken = { line, from, seconds };
    from += seconds + pace.sentenceSeconds;
    return spoken;
  });
}
