import type { BlockScreenClock, Segment } from "../../speech";
import type { Run } from "../paper";
import { weighedWords } from "./emphasis";
import { beginsAfterEnd, type ScriptRow } from "./script";

/** Signs for a breath, explained in the legend: the coach's own mark, and a place we suggest. */
export const MARKED_BREATH = "/";
export const SUGGESTED_BREATH = "¦";

/** A difference smaller than this is no difference a cut can see; seconds. */
export const NEAR = 0.5;

/** Minutes and seconds of a running time: 83.4 is "1:23"; from an hour up "1:02:03". */
export function minutesSeconds(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  const two = (n: number): string => String(n).padStart(2, "0");
  const minutes = Math.floor(whole / 60);
  return minutes < 60 ? `${minutes}:${two(whole % 60)}` : `${Math.floor(minutes / 60)}:${two(minutes % 60)}:${two(whole % 60)}`;
}

/** "1 word", "12 words" */
export const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** Seconds as a person says them: whole, but never 0 for something that is there. */
export const wholeSeconds = (seconds: number): string => `${seconds > 0 ? Math.max(1, Math.round(seconds)) : 0} s`;

/** Seconds with a tenth: only where whole ones would not add up. */
const tenths = (seconds: number): string => `${Number((seconds > 0 ? Math.max(0.1, seconds) : 0).toFixed(1))} s`;

/** How a block's words stand to its clip, in figures that add up as they are printed. */
export interface Fit {
  readonly words: string;
  /** Null where no clip is set. */
  readonly clip: string | null;
  /** "3 s" beyond the clip; empty when the words fit it. */
  readonly over: string;
  /** "28 s too long: cut about 70 words", "12 s of picture left", "fits". */
  readonly verdict: string;
}

/** A difference of fewer seconds is told to the tenth rather than rounded twice. */
const SMALL = 10;

/** A clip of 2 s less words of "1 s" cannot leave "2 s": small ones have tenths then, large ones are counted from what is printed. */
export function fitOf(clock: BlockScreenClock): Fit {
  const { clipSeconds, overSeconds, spoken, wordsToCut } = clock;
  if (clipSeconds === null) return { words: wholeSeconds(spoken.seconds), clip: null, over: "", verdict: "no clip length set" };
  const off = Math.abs(clipSeconds - spoken.seconds);
  const printed = Math.abs(parseFloat(wholeSeconds(clipSeconds)) - parseFloat(wholeSeconds(spoken.seconds)));
  const figures = off <= NEAR || off >= SMALL || printed === Math.round(off) ? wholeSeconds : tenths;
  const by = figures(off >= SMALL ? printed : off);
  const over = overSeconds > NEAR ? by : "";
  const verdict = over !== "" ? `${over} too long: cut about ${counted(wordsToCut, "word")}` : off > NEAR ? `${by} of picture left` : "fits";
  return { words: figures(spoken.seconds), clip: figures(clipSeconds), over, verdict };
}

/** When a sentence begins: "1:23" of the finished video, or "+3 s" past the end of its block's picture, which has no such time. */
export function beginning(row: ScriptRow): string {
  const after = beginsAfterEnd(row);
  if (after <= 0) return minutesSeconds(row.at);
  return `+${after < 60 ? wholeSeconds(after) : minutesSeconds(after)}`;
}

/** "runs 3 s over" for a sentence that begins on its block's picture and ends after it. */
export const runsOver = (row: ScriptRow): string => (row.overSeconds > NEAR && beginsAfterEnd(row) <= 0 ? `runs ${wholeSeconds(row.overSeconds)} over` : "");

/** A figure, a range or a choice of figures, and what it counts: they are read together, so that no line may part them. */
const FIGURE = /^[^\p{L}\p{N}]*\d[\d.,/–-]*$/u;
const UNIT = /^(?:kg|g|lbs?|mm|cm|m|km|s|secs?|mins?|h|hrs?|x|×|%|°|reps?|sets?|rounds?|kilos?|pounds?|seconds?|minutes?|met(?:re|er)s?|degrees?)(?![\p{L}\p{N}])/iu;
const isOne = (before: string, word: string): boolean => (FIGURE.test(before) && UNIT.test(word)) || (/^[x×@]$/i.test(before) && FIGURE.test(word));

/**
 * The words of a row with a sign at every breath inside it: bold where the coach marked one, grey where one is suggested.
 * A sentence's end needs no sign; a breath marked at the row's end keeps its own. Words between stars are bold; a figure stays with
 * its unit.
 */
export function breathRuns(segments: readonly Segment[]): Run[] {
  const words = segments.flatMap((segment, at) => weighedWords(segment.text).map((word) => ({ ...word, segment: at })));
  const runs: { text: string; weight?: "bold"; grey?: true }[] = [];
  words.forEach((word, at) => {
    const space = at === 0 ? "" : isOne(words[at - 1]?.text ?? "", word.text) ? "\u00a0" : " ";
    const last = runs.at(-1);
    if (last && last.grey === undefined && (last.weight === "bold") === word.strong && last.text.trim() !== MARKED_BREATH) last.text += space + word.text;
    else runs.push({ text: space + word.text, ...(word.strong ? { weight: "bold" as const } : {}) });
    const ends = words[at + 1]?.segment !== word.segment;
    const breath = segments[word.segment]?.breathAfter;
    // The sign stays with the word before it: a line never begins with a breath.
    if (ends && breath === "marked") runs.push({ text: `\u00a0${MARKED_BREATH}`, weight: "bold" });
    else if (ends && breath === "suggested") runs.push({ text: `\u00a0${SUGGESTED_BREATH}`, grey: true });
  });
  return runs;
}
