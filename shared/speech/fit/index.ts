import { applyEdits, emptyEpisode, linesOf, memoOn, type Block, type Edit } from "../../episode";
import { HANDLE_SECONDS, setClipSeconds, speakBlock } from "../screen-clock";
import { speakLine } from "../speak-line";
import type { Pace, Spoken } from "../types";
import { suggestCuts } from "./suggest";
import type { BlockFit, QuietPlace } from "./types";

export type { BlockFit, CutReason, CutSuggestion, QuietPlace } from "./types";
export { breathEdits, withBreathMarks } from "./breath-marks";

/** Longest silence between two lines before it sounds like a mistake; seconds. Common practice, no source. */
const LONGEST_GAP = 4;

/** Free seconds of a block's clip beside its words, below 0 when it is too short; 0 without a clip. */
function spareOf(block: Block, spoken: Spoken): number {
  const clipSeconds = setClipSeconds(block, spoken);
  return clipSeconds === null ? 0 : clipSeconds - spoken.seconds;
}

/**
 * Spreads free seconds: up to half of the usual picture before the first word and after the last, then evenly between the
 * lines, the rest after the last word, where the movement may be seen without one.
 */
function quietPlaces(lines: readonly string[], free: number): QuietPlace[] {
  const last = lines.at(-1);
  if (!(free > 0) || last === undefined) return [];
  const edge = Math.min(HANDLE_SECONDS, free) / 2;
  const gaps = lines.length - 1;
  const gap = gaps > 0 ? Math.min(LONGEST_GAP, (free - 2 * edge) / (gaps + 1)) : 0;
  return [
    { after: null, seconds: edge },
    ...lines.slice(0, -1).map((after) => ({ after, seconds: gap })),
    { after: last, seconds: free - edge - gaps * gap },
  ].filter(({ seconds }) => seconds > 0);
}

const quietAt = memoOn((pace: Pace) =>
  memoOn((block: Block): QuietPlace[] => {
    const said = linesOf(block, "say").filter((line) => speakLine(line, pace).words > 0).map(({ id }) => id);
    return quietPlaces(said, spareOf(block, speakBlock(block, pace)));
  }));

/** Where a block's free seconds may stay silent; the quick part of its fit. Remembered per pace and block. */
export const quietIn = (block: Block, pace: Pace): readonly QuietPlace[] => quietAt(pace)(block);

const fitAt = memoOn((pace: Pace) =>
  memoOn((block: Block): BlockFit => {
    const spoken = speakBlock(block, pace);
    const spare = spareOf(block, spoken);
    return {
      block: block.id, clipSeconds: setClipSeconds(block, spoken), spoken,
      overSeconds: Math.max(0, -spare), underSeconds: Math.max(0, spare),
      wordsToCut: spare < 0 ? Math.ceil(-spare / (spoken.seconds / spoken.words)) : 0,
      suggestions: suggestCuts(block, pace),
      quiet: quietIn(block, pace),
    };
  }));

/** A block's words against its clip, with ways of saying less. Remembered per pace and block. */
export const blockFit = (block: Block, pace: Pace): BlockFit => fitAt(pace)(block);

/**
 * Cuts a block's words until they fit its clip, suggestion by suggestion, best first.
 * @returns the edits to apply in order, none when it fits already; they may leave it over when no suggestion is left
 */
export function editsToFit(block: Block, pace: Pace): Edit[] {
  const edits: Edit[] = [];
  let ids = 0;
  let episode = emptyEpisode(() => `fit-${(ids += 1)}`, { blocks: [block] });
  for (;;) {
    const now = episode.blocks[0];
    if (!now) return edits;
    const { overSeconds, suggestions } = blockFit(now, pace);
    const next = suggestions.find(({ edits: steps, savesSeconds }) => steps.length > 0 && savesSeconds > 0);
    if (overSeconds <= 0 || !next) return edits;
    edits.push(...next.edits);
    episode = applyEdits(episode, next.edits);
  }
}
