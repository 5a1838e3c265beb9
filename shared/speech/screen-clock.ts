import { linesOf, memoOn, type Block, type Episode } from "../episode";
import { DEFAULT_PACE } from "./pace";
import { spokenTogether } from "./speak";
import { speakLine } from "./speak-line";
import type { BlockScreenClock, MeasuredSeconds, Pace, ScreenClock, Spoken } from "./types";

/** Picture before the first word and after the last, together; seconds. Common practice, no source. */
export const HANDLE_SECONDS = 2;

const spokenAt = memoOn((pace: Pace) =>
  memoOn((block: Block): Spoken => spokenTogether(linesOf(block, "say").map((line) => speakLine(line, pace)), pace.sentenceSeconds)));

/** How long a block's say lines take, a sentence's pause between lines. Remembered per pace and block. */
export const speakBlock = (block: Block, pace: Pace): Spoken => spokenAt(pace)(block);

/** The same where takes tell how long some of the lines really took. */
function spokenBlock(block: Block, pace: Pace, measured: MeasuredSeconds | undefined): Spoken {
  if (!measured || !block.lines.some(({ id }) => measured.has(id))) return speakBlock(block, pace);
  return spokenTogether(linesOf(block, "say").map((line) => ({ ...speakLine(line, pace), ...measured.get(line.id) })), pace.sentenceSeconds);
}

/** The clip's length; null when none is set. No words can be said over a clip of 0 seconds, so with words it is one that nobody set yet. */
export const setClipSeconds = ({ clipSeconds }: Pick<Block, "clipSeconds">, { words }: Spoken): number | null => (clipSeconds === 0 && words > 0 ? null : clipSeconds);

/** One block's seconds and where they come from. */
function blockClock(block: Block, shotSeconds: number, spoken: Spoken): BlockScreenClock {
  const clipSeconds = setClipSeconds(block, spoken);
  const overSeconds = clipSeconds === null ? 0 : Math.max(0, spoken.seconds - clipSeconds);
  const from = clipSeconds !== null ? "clip" : spoken.words > 0 ? "words" : shotSeconds > 0 ? "shots" : "nothing";
  const seconds = { clip: clipSeconds ?? 0, words: spoken.seconds + HANDLE_SECONDS, shots: shotSeconds, nothing: 0 }[from];
  return {
    block: block.id, seconds, from, spoken, shotSeconds, clipSeconds, overSeconds,
    wordsToCut: overSeconds > 0 ? Math.ceil(overSeconds / (spoken.seconds / spoken.words)) : 0,
  };
}

/**
 * Seconds of finished video, block by block, against the target.
 *
 * A block takes its clip's length once that is set; before that its words and the handles around them; without words its shots. A clip of 0
 * seconds with words over it is not set.
 * @param shotSeconds - what a block's shots add up to, seconds
 * @param pace - the speaker's own, or the default; keep the same object between calls, answers are remembered by it
 * @param measured - lines that were read and timed
 */
export function screenClock(
  episode: Pick<Episode, "blocks"> & { readonly video: Pick<Episode["video"], "targetSeconds"> }, shotSeconds: (block: Block) => number, pace: Pace = DEFAULT_PACE, measured?: MeasuredSeconds,
): ScreenClock {
  const blocks = episode.blocks.map((block) => blockClock(block, shotSeconds(block), spokenBlock(block, pace, measured)));
  return { seconds: blocks.reduce((sum, { seconds }) => sum + seconds, 0), targetSeconds: episode.video.targetSeconds, blocks };
}
