import { loudnessMeter } from "./loudness";

/** A stretch of time in a recording. Seconds. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What is heard in a recording of one voice. */
export interface HeardSpeech {
  /** From the first sound of the voice to its last; both 0 when there is none. Seconds. */
  readonly from: number;
  readonly to: number;
  readonly voicedSeconds: number;
  /** The silences between, each long enough to be a pause and no closing of the lips. */
  readonly pauses: readonly Stretch[];
}

/** Shorter silences belong to the word: the closure of a p, t or k. Campione and Véronis 2002 call pauses below 0.2 s brief. */
const LEAST_PAUSE = 0.12;
/** Shorter sounds are clicks; seconds. */
const LEAST_SOUND = 0.04;
/** A recording softer than this throughout holds no voice; decibels below full scale. */
const SILENT = -55;
/** The quietest part of a recording is taken to be no more than this below its loud part; decibels. */
const RANGE = 50;
/** How far up from the room's noise to the voice a frame must come to count as voice. Common practice, no source. */
const RISE = 0.35;

const percentile = (sorted: readonly number[], share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? -120;

/** Runs of frames above a level, as frame numbers; `to` is one past the last. */
function runsAbove(levels: readonly number[], threshold: number): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  levels.forEach((level, at) => {
    const last = runs.at(-1);
    if (level <= threshold) return;
    if (last && last.to === at) last.to = at + 1;
    else runs.push({ from: at, to: at + 1 });
  });
  return runs;
}

/**
 * Where a recording holds a voice and where it is silent, told from how loud it is. The threshold lies between the room's noise and
 * the voice, so neither the gain nor a steady hum matters.
 *
 * Known limit: a loud noise as long as a word counts as voice.
 * @param levels - of each frame, decibels below full scale
 */
export function heardIn(levels: readonly number[], frameSeconds: number): HeardSpeech {
  const seconds = (frames: number): number => frames * frameSeconds;
  const sorted = [...levels].sort((a, b) => a - b);
  // told from what can be heard at all: a few sentences are little of a recording that ran on through the sets
  const loud = percentile(sorted.filter((level) => level >= SILENT), 0.98);
  const floor = Math.max(percentile(sorted, 0.05), loud - RANGE);
  // when nothing is quieter than the voice, the take holds no silence at all
  const steady = loud - floor < 6;
  const runs = runsAbove(levels, steady ? SILENT : floor + RISE * (loud - floor));
  const sounds = runs.filter(({ from, to }) => seconds(to - from) >= LEAST_SOUND);
  const joined: { from: number; to: number }[] = [];
  for (const { from, to } of sounds) {
    const last = joined.at(-1);
    if (last && seconds(from - last.to) < LEAST_PAUSE) last.to = to;
    else joined.push({ from, to });
  }
  return {
    from: seconds(joined[0]?.from ?? 0),
    to: seconds(joined.at(-1)?.to ?? 0),
    voicedSeconds: seconds(joined.reduce((sum, { from, to }) => sum + to - from, 0)),
    pauses: joined.slice(1).map(({ from }, at) => ({ from: seconds(joined[at]?.to ?? 0), to: seconds(from) })),
  };
}

/**
 * Where samples hold a voice and where they are silent, as `heardIn` tells it.
 * @param samples - one channel, -1 to 1
 * @param sampleRate - samples a second
 */
export function heardSpeech(samples: ArrayLike<number>, sampleRate: number): HeardSpeech {
  const { add, levels, frameSeconds } = loudnessMeter(sampleRate);
  add(samples);
  return heardIn(levels, frameSeconds);
}
