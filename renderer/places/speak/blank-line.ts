import type { Block } from "../../../shared/episode";
import type { BlockTimeline, TimedLine } from "../../voiceover/timeline";

/** A say line that was begun and has no words yet. */
export interface Blank {
  readonly line: string;
  /** Its place among the block's lines once it has words; null for the end. */
  readonly at: number | null;
}

/** The lines of a ruler with a blank one where its words will stand. */
export function withBlank({ lines }: BlockTimeline, block: Block, blank: Blank | null): readonly TimedLine[] {
  // It has become a line of the block by its first letter.
  if (blank === null || block.lines.some(({ id }) => id === blank.line)) return lines;
  const before = new Set(block.lines.slice(0, blank.at ?? undefined).map(({ id }) => id));
  const place = lines.filter(({ placed }) => before.has(placed.line)).length;
  const [last, next] = [lines[place - 1], lines[place]];
  const from = next?.from ?? (last ? last.from + last.placed.seconds : 0);
  const own: TimedLine = { placed: { line: blank.line, text: "", seconds: 0, words: [], stretches: [], breaths: [] }, from };
  return [...lines.slice(0, place), own, ...lines.slice(place)];
}
