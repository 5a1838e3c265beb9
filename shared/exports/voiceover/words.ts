import type { BlockScreenClock, Segment } from "../../speech";
import type { Run } from "../paper";
import { weighedWords } from "./emphasis";

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

/** "28 s too long: cut about 70 words", "12 s of picture left", "fits". */
export function verdict(clock: BlockScreenClock): string {
  if (clock.clipSeconds === null) return "no clip length set";
  if (clock.overSeconds > NEAR) return `${wholeSeconds(clock.overSeconds)} too long: cut about ${counted(clock.wordsToCut, "word")}`;
  const left = clock.clipSeconds - clock.spoken.seconds;
  return left > NEAR ? `${wholeSeconds(left)} of picture left` : "fits";
}

/**
 * The words of a row with a sign at every breath inside it: bold where the coach marked one, grey where one is suggested.
 * A sentence's end needs no sign; a breath marked at the row's end keeps its own. Words between stars are bold.
 */
export function breathRuns(segments: readonly Segment[]): Run[] {
  const words = segments.flatMap((segment, at) => weighedWords(segment.text).map((word) => ({ ...word, segment: at })));
  const runs: { text: string; weight?: "bold"; grey?: true }[] = [];
  words.forEach((word, at) => {
    const space = at === 0 ? "" : " ";
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
