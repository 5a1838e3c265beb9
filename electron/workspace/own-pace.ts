import { DEFAULT_PACE, type Pace } from "../../shared/speech";
import { readVoice } from "./voice";

/** The pace a library's papers are counted at. */
export interface OwnPace {
  readonly pace: Pace;
  /** Whose pace it is, in a sentence. */
  readonly sentence: string;
}

const rate = (pace: Pace): string => `${pace.syllablesPerSecond.toFixed(1)} syllables a second`;

/** The speaker's own pace where one was measured in this library, the usual one elsewhere. Never throws. */
export async function ownPaceIn(library: string): Promise<OwnPace> {
  const read = await readVoice(library);
  if (!read.ok) return { pace: DEFAULT_PACE, sentence: read.message };
  if (read.voice === null) return { pace: DEFAULT_PACE, sentence: `Counted at the usual pace, ${rate(DEFAULT_PACE)}; no pace was measured in the episode's folder.` };
  const { pace, lines } = read.voice;
  return { pace, sentence: `Counted at your own pace, ${rate(pace)}, measured on ${lines} ${lines === 1 ? "line" : "lines"}.` };
}
