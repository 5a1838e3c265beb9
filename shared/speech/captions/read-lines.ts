import { plainText } from "./plain-text";
import { readTime } from "./times";
import type { OpenCue } from "./read-arrows";
import type { CaptionAside } from "./types";

const CLOCK = String.raw`\d{1,4}(?::\d{1,2}){1,2}(?:[.,]\d{1,6})?`;
/** "0:05 words", "[00:05] words", "0:05 - 0:09 words", "(1:02:03): words", "0:05" alone. */
const CLOCK_FIRST = new RegExp(String.raw`^\s*[[(]?(${CLOCK})(?:\s*(?:-{1,2}|–|—|to)\s*(${CLOCK}))?[\])]?(?:\s*[-–—:|]\s+|[\s:|]+|$)(.*)$`);
/** "12.48 15.02 words", parted by tabs or two numbers in seconds. */
const SECONDS_FIRST = /^\s*(\d{1,6}(?:\.\d{1,6})?)\t(\d{1,6}(?:\.\d{1,6})?)\t(.*)$/;

interface TimedLine {
  readonly start: number;
  readonly end: number | null;
  readonly text: string;
}

/** One line that begins with a time, or null. */
export function readTimedLine(line: string): TimedLine | null {
  const seconds = SECONDS_FIRST.exec(line);
  if (seconds) return { start: Number(seconds[1]), end: Number(seconds[2]), text: seconds[3] ?? "" };
  const clock = CLOCK_FIRST.exec(line);
  const start = clock ? readTime(clock[1] ?? "") : null;
  if (!clock || !start) return null;
  return { start: start.seconds, end: clock[2] === undefined ? null : (readTime(clock[2])?.seconds ?? null), text: clock[3] ?? "" };
}

/**
 * Plain lines with times. A line without a time goes on with the line above; words before the first time become asides.
 * @param secondsOf - how long words take; a line's end is the next line's start unless its words end long before
 */
export function readLines(lines: readonly string[], secondsOf: (text: string) => number): { cues: OpenCue[]; asides: CaptionAside[] } {
  const asides: CaptionAside[] = [];
  const found: { line: number; start: number; end: number | null; words: string[] }[] = [];
  lines.forEach((line, at) => {
    if (line.trim() === "") return;
    const timed = readTimedLine(line);
    const last = found.at(-1);
    if (timed) found.push({ line: at + 1, start: timed.start, end: timed.end, words: timed.text === "" ? [] : [timed.text] });
    else if (last) last.words.push(line);
    else asides.push({ line: at + 1, kind: "untimed", text: plainText([line], "subrip") });
  });
  const cues = found.map(({ line, start, end, words }, at): OpenCue => {
    const text = plainText(words, "subrip");
    const next = found[at + 1]?.start ?? null;
    const spoken = secondsOf(text);
    // Twice the usual time is a slow speaker; more is silence after the words.
    const until = next !== null && next > start ? (next - start > 2 * spoken + 1 ? start + spoken : next) : start + spoken;
    return { line, start, end: end ?? until, text };
  });
  return { cues: cues.filter(({ text }) => text !== ""), asides };
}
