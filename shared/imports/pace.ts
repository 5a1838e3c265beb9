import { syllablesOf, spokenForm } from "../speech";
import type { MeasuredPace, Word } from "./types";

/** Silence longer than this is a rest, a set, or looking for the dumbbell, and no part of speaking. Seconds. */
const SILENCE = 0.9;
/** A stretch spoken this many times slower or faster than most is a caption that was left standing, or a slip of the times. */
const ODD = 1.7;
/** Too few words give no pace. */
const FEWEST = 40;

interface Stretch {
  readonly words: number;
  readonly syllables: number;
  readonly seconds: number;
}

/** Syllables of a word as said; figures are said in words. */
const syllables = (plain: string): number => (/\d/.test(plain) ? spokenForm(plain).split(" ").reduce((sum, word) => sum + syllablesOf(word), 0) : syllablesOf(plain));

/** Stretches of speech without a silence, and the captions in them: `edge` shows where each begins. */
function captionsOf(words: readonly Word[]): { readonly captions: Stretch[]; readonly gaps: number[] } {
  const captions: Stretch[] = [];
  const gaps: number[] = [];
  let open: { words: number; syllables: number; start: number; end: number } | null = null;
  const close = (): void => {
    if (open && open.end > open.start) captions.push({ words: open.words, syllables: open.syllables, seconds: open.end - open.start });
    open = null;
  };
  for (const { plain, start, end, edge, pause } of words) {
    if (start === null || end === null) continue;
    if (edge === "cue" || open === null) {
      close();
      if (pause > 0) gaps.push(pause);
      open = { words: 0, syllables: 0, start, end };
    }
    if (plain !== "") {
      open.words += 1;
      open.syllables += syllables(plain);
    }
    open.end = Math.max(open.end, end);
  }
  close();
  return { captions, gaps };
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/**
 * How fast the speaker was. Captions spoken at an odd rate are left out, and so is every silence longer than a pause between
 * sentences. Null without times, or with too few words.
 */
export function measurePace(words: readonly Word[]): Omit<MeasuredPace, "own"> | null {
  const { captions, gaps } = captionsOf(words);
  if (captions.reduce((sum, caption) => sum + caption.words, 0) < FEWEST) return null;
  const usual = middle(captions.filter((caption) => caption.words >= 3).map((caption) => caption.syllables / caption.seconds));
  const even = captions.filter((caption) => caption.words > 0 && caption.syllables / caption.seconds < usual * ODD && caption.syllables / caption.seconds > usual / ODD);
  const pauses = gaps.filter((gap) => gap <= SILENCE).reduce((sum, gap) => sum + gap, 0);
  const seconds = even.reduce((sum, caption) => sum + caption.seconds, 0) + pauses;
  const [count, beats] = [even.reduce((sum, caption) => sum + caption.words, 0), even.reduce((sum, caption) => sum + caption.syllables, 0)];
  if (seconds <= 0 || count === 0) return null;
  const times = words.flatMap(({ start, end }) => (start === null || end === null ? [] : [start, end]));
  const whole = times.reduce((most, time) => Math.max(most, time), 0) - times.reduce((least, time) => Math.min(least, time), Infinity);
  return { wordsPerMinute: (count / seconds) * 60, syllablesPerSecond: beats / seconds, speechSeconds: seconds, silentSeconds: Math.max(0, whole - seconds) };
}
