import { linesOf, memoOn, type Block } from "../../shared/episode";
import { HANDLE_SECONDS, breaths, speak, type BlockScreenClock, type Pace, type Segment } from "../../shared/speech";
import { clock, seconds } from "../words/clock";
import { count } from "../words/count";

/** One say line with the moment it begins, counted from the start of its block. Seconds. */
export interface SpeakRow {
  readonly line: string;
  readonly from: number;
  readonly seconds: number;
  readonly words: number;
  readonly segments: readonly Segment[];
}

/** Kept per pace and per block, so typing in one block speaks only that block again. */
const rowsAt = memoOn((pace: Pace) =>
  memoOn((block: Block): SpeakRow[] => {
    let from = HANDLE_SECONDS / 2;
    return linesOf(block, "say").map((line) => {
      const spoken = speak(line.text, pace);
      const row = { line: line.id, from, seconds: spoken.seconds, words: spoken.words, segments: breaths(line.text, pace) };
      from += spoken.seconds + pace.sentenceSeconds;
      return row;
    });
  }),
);

/** The words of a block as they are said, line after line. The first begins after half of the picture's handles. */
export function speakRows(block: Block, pace: Pace): SpeakRow[] {
  return rowsAt(pace)(block);
}

/** One sentence about words and clip: what there is, and what to do about it. */
export function fitSentence(screen: BlockScreenClock): string {
  const { spoken, clipSeconds, overSeconds, wordsToCut } = screen;
  if (spoken.words === 0) return clipSeconds === null ? "No words and no clip length yet." : `No words over a ${clock(clipSeconds)} clip.`;
  const said = `${seconds(spoken.seconds)} s of words`;
  if (clipSeconds === null) return `${said}, no clip length yet: the words set it, ${clock(screen.seconds)}.`;
  if (overSeconds > 0) return `${said} over a ${clock(clipSeconds)} clip: ${seconds(overSeconds)} s over, cut about ${count(wordsToCut, "word")}.`;
  return `${said} over a ${clock(clipSeconds)} clip, ${seconds(clipSeconds - spoken.seconds)} s free.`;
}
