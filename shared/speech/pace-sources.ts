import { fitPace, type PaceFit, type PaceSample } from "./fit-pace";
import { silenceOf } from "./own-pace";
import { DEFAULT_PACE } from "./pace";
import { heardSpeech } from "./recording";
import { speak } from "./speak";
import type { Pace } from "./types";

/** A caption that begins this soon after the last has no silence of its own before it; seconds. */
const RUNS_ON = 0.3;
/** A silence in a recording longer than this is no pause of speech: a retake, a page turned; seconds. */
const LONGEST_PAUSE = 2;
/** Pauses are scaled within these limits, whatever was heard. */
const PAUSES = { least: 0.3, most: 3 } as const;

/**
 * A speaker's pace from the captions of something they spoke. A caption that runs on into the next is timed to the next one's
 * beginning; one that is left standing over a silence is told by its odd pace and left out.
 * @param cues - seconds, in order
 */
export function paceFromCaptions(cues: readonly { readonly start: number; readonly end: number; readonly text: string }[], base: Pace = DEFAULT_PACE): PaceFit | null {
  return fitPace(
    cues.map(({ start, end, text }, at): PaceSample => {
      const next = cues[at + 1]?.start ?? Infinity;
      const runsOn = next >= start && next - end < RUNS_ON;
      return { text, seconds: (runsOn ? next : end) - start, withPause: runsOn };
    }),
    base,
  );
}

/**
 * A speaker's pace from a read-through with one tap when it begins and one at the end of every line.
 * A line during which the reader stopped for something else is left out.
 * @param taps - seconds, one more than there are lines
 */
export function paceFromTaps(lines: readonly string[], taps: readonly number[], base: Pace = DEFAULT_PACE): PaceFit | null {
  return fitPace(lines.map((text, at) => ({ text, seconds: (taps[at + 1] ?? Number.NaN) - (taps[at] ?? Number.NaN), withPause: at < lines.length - 1 })), base);
}

/**
 * A speaker's pace from a recording of a known text: the rate from the time the voice is heard, the pauses from the silences
 * between. Long silences count as pauses of two seconds.
 * @param samples - one channel, -1 to 1
 * @param sampleRate - samples a second
 * @returns null when no voice is heard, or what is heard cannot be the text
 */
export function paceFromRecording(text: string, samples: ArrayLike<number>, sampleRate: number, base: Pace = DEFAULT_PACE): Pace | null {
  const heard = heardSpeech(samples, sampleRate);
  const silence = silenceOf(text, base);
  const words = speak(text, base).seconds - silence;
  const factor = heard.voicedSeconds / words;
  if (!(words > 0 && factor >= 0.4 && factor <= 2.5)) return null;
  const pauses = heard.pauses.reduce((sum, { from, to }) => sum + Math.min(to - from, LONGEST_PAUSE), 0);
  const scale = silence > 0 ? Math.min(PAUSES.most, Math.max(PAUSES.least, pauses / silence)) : factor;
  return {
    ...base,
    syllablesPerSecond: base.syllablesPerSecond / factor,
    commaSeconds: base.commaSeconds * scale,
    sentenceSeconds: base.sentenceSeconds * scale,
    breathSeconds: base.breathSeconds * scale,
  };
}
