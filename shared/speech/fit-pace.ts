import { DEFAULT_PACE } from "./pace";
import { saidWords } from "./said-words";
import { speak } from "./speak";
import type { Pace } from "./types";

/** Something that was said, and how long it took. */
export interface PaceSample {
  readonly text: string;
  readonly seconds: number;
  /** The seconds run on to the beginning of what is said next, so the pause after the text is in them. */
  readonly withPause?: boolean;
}

/** A pace found from samples. */
export interface PaceFit {
  readonly pace: Pace;
  /** How many samples speak for it, and how many were left out as too far from the rest. */
  readonly used: number;
  readonly left: number;
  /** By how much the pace misses a sample that was used, on average; a share of its seconds. */
  readonly error: number;
}

/** A sample this far from the middle one measures something else: a phone call, a caption left standing. Common practice, no source. */
const FAR = 0.35;
/** Below this much speech nothing is known; seconds. */
export const LEAST_SECONDS = 2;
/** No person speaks this much slower or faster than the default pace. */
const FACTORS = { least: 0.4, most: 2.5 } as const;

/** Seconds a sample would take at a pace. */
function expectedSeconds({ text, withPause = false }: PaceSample, pace: Pace): number {
  const pause = withPause ? (saidWords(text, pace).at(-1)?.pauseSeconds ?? 0) : 0;
  return speak(text, pace).seconds + pause;
}

/** The value with half of the weight on either side. */
function weightedMedian(values: readonly { readonly value: number; readonly weight: number }[]): number {
  const sorted = [...values].sort((a, b) => a.value - b.value);
  const half = sorted.reduce((sum, { weight }) => sum + weight, 0) / 2;
  let below = 0;
  for (const { value, weight } of sorted) {
    below += weight;
    if (below >= half) return value;
  }
  return Number.NaN;
}

/** A pace slower by a factor: everything takes so much longer, the pauses too. */
export function slowedPace(pace: Pace, factor: number): Pace {
  return {
    ...pace,
    syllablesPerSecond: pace.syllablesPerSecond / factor,
    commaSeconds: pace.commaSeconds * factor,
    sentenceSeconds: pace.sentenceSeconds * factor,
    breathSeconds: pace.breathSeconds * factor,
  };
}

/**
 * The pace at which the samples were spoken: one factor on words and pauses alike.
 *
 * The middle factor decides which samples are believed, so up to half of the speech may be badly measured.
 * @returns null when there is too little to go by
 */
export function fitPace(samples: readonly PaceSample[], base: Pace = DEFAULT_PACE): PaceFit | null {
  const read = samples
    .map((sample) => ({ seconds: sample.seconds, expected: expectedSeconds(sample, base) }))
    .filter(({ seconds, expected }) => Number.isFinite(seconds) && seconds > 0 && expected > 0);
  const middle = weightedMedian(read.map(({ seconds, expected }) => ({ value: seconds / expected, weight: expected })));
  const used = read.filter(({ seconds, expected }) => Math.abs(seconds / expected / middle - 1) <= FAR);
  const [seconds, expected] = [used.reduce((sum, one) => sum + one.seconds, 0), used.reduce((sum, one) => sum + one.expected, 0)];
  const factor = seconds / expected;
  if (!(seconds >= LEAST_SECONDS && factor >= FACTORS.least && factor <= FACTORS.most)) return null;
  const error = used.reduce((sum, one) => sum + Math.abs((factor * one.expected) / one.seconds - 1), 0) / used.length;
  return { pace: slowedPace(base, factor), used: used.length, left: samples.length - used.length, error };
}
