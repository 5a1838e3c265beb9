import { DEFAULT_PACE } from "./pace";
import { speak } from "./speak";
import type { Pace } from "./types";

/** Slower or faster than this is no speech but a wrong measurement; syllables a second. Common practice, no source. */
const SLOWEST = 1.5;
const FASTEST = 9;

/** What a text takes when every word takes no time: the pauses alone. Seconds. */
const silenceOf = (text: string, pace: Pace): number => speak(text, { ...pace, syllablesPerSecond: Number.MAX_VALUE }).seconds;

/**
 * A speaker's own pace from something they read aloud: the pauses of `base`, and the rate that fills the rest of the time.
 * @param texts - what was read; the longer the better. Silence between two of them is not in `seconds`
 * @param seconds - of each text from its first sound to its last, together
 * @returns null when nothing was read, or the time cannot be right for the text
 */
export function ownPace(texts: readonly string[], seconds: number, base: Pace = DEFAULT_PACE): Pace | null {
  const sum = (of: (text: string) => number): number => texts.reduce((all, text) => all + of(text), 0);
  const silence = sum((text) => silenceOf(text, base));
  const beats = (sum((text) => speak(text, base).seconds) - silence) * base.syllablesPerSecond;
  const syllablesPerSecond = beats / (seconds - silence);
  if (!(syllablesPerSecond >= SLOWEST && syllablesPerSecond <= FASTEST)) return null;
  return { ...base, syllablesPerSecond };
}
