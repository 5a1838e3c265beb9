import type { BlockScreenClock } from "../../../shared/speech";
import { clock, seconds } from "../../words/clock";
import { count } from "../../words/count";

/** One sentence about words and clip: what there is, and what to do about it. */
export function fitSentence(screen: BlockScreenClock): string {
  const { spoken, clipSeconds, overSeconds, wordsToCut } = screen;
  if (spoken.words === 0) return clipSeconds === null ? "No words and no clip length yet." : `No words over a ${clock(clipSeconds)} clip.`;
  const said = `${seconds(spoken.seconds)} s of words`;
  if (clipSeconds === null) return `${said}, no clip length yet: the words set it, ${clock(screen.seconds)}.`;
  if (overSeconds > 0) return `${said} over a ${clock(clipSeconds)} clip: ${seconds(overSeconds)} s over, cut about ${count(wordsToCut, "word")}.`;
  return `${said} over a ${clock(clipSeconds)} clip, ${seconds(clipSeconds - spoken.seconds)} s free.`;
}
