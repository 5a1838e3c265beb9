import { episodeClocks } from "../../clocks";
import { blockName, type Block, type Episode } from "../../episode";
import { secondsOf, shotsOf } from "../../filming";
import { breaths, speak, spokenLines, type BlockScreenClock, type MeasuredSeconds, type Pace, type Pronunciation, type Segment } from "../../speech";
import { withoutStars } from "./emphasis";
import { pronounced } from "./pronounced";

/** What is read in one go: a sentence, or where a sentence is longer than any page should hold, a part of it that ends at a breath. */
export interface ScriptRow {
  /** Running time of the finished video when it begins, and how long it takes; seconds. */
  readonly at: number;
  readonly seconds: number;
  /** Seconds of it that the block's picture no longer has: all of them, or more, where it begins after the end. 0 where it fits. */
  readonly overSeconds: number;
  /** In breaths, stars of emphasis still in. */
  readonly segments: readonly Segment[];
  readonly pronounced: readonly Pronunciation[];
  /** What is on screen from here on: shot lines as written. */
  readonly shots: readonly string[];
  /** The seconds are those of a take, or its share of them. */
  readonly isMeasured: boolean;
  /** The say line ends here. */
  readonly endsLine: boolean;
}

export interface ScriptBlock {
  readonly block: Block;
  /** From 1. */
  readonly number: number;
  readonly name: string;
  readonly starts: number;
  readonly clock: BlockScreenClock;
  readonly rows: readonly ScriptRow[];
  /** Shots that begin after the last words, or those of a block without words. */
  readonly restShots: readonly string[];
}

/** Seconds from the end of the picture to where a row begins; negative or 0 while there is picture. Its running time is another block's then. */
export const beginsAfterEnd = ({ overSeconds, seconds }: ScriptRow): number => overSeconds - seconds;

/** A row of more characters than this is cut at a breath: it still fits half a page in the largest type. */
const LONGEST_ROW = 420;

const endsSentence = (segment: Segment): boolean => segment.breathAfter === null || /[.!?…]["'”’)\]*]*$/.test(segment.text);

/** Breaths gathered into sentences. */
function sentences(segments: readonly Segment[]): Segment[][] {
  const rows: Segment[][] = [];
  let open: Segment[] = [];
  let characters = 0;
  for (const segment of segments) {
    if (open.length > 0 && characters + segment.text.length > LONGEST_ROW) {
      rows.push(open);
      [open, characters] = [[], 0];
    }
    open.push(segment);
    characters += segment.text.length;
    if (!endsSentence(segment)) continue;
    rows.push(open);
    [open, characters] = [[], 0];
  }
  return open.length > 0 ? [...rows, open] : rows;
}

/** The text of some breaths, as it was typed. */
export const textOf = (segments: readonly Segment[]): string =>
  segments.map((segment, at) => (segment.breathAfter === "marked" && at < segments.length - 1 ? `${segment.text} /` : segment.text)).join(" ");

function rowsOf(line: { readonly text: string; readonly from: number; readonly seconds: number; readonly isMeasured: boolean }, pace: Pace, ends: number): Omit<ScriptRow, "shots">[] {
  const parts = sentences(breaths(line.text, pace)).map((segments) => {
    const text = textOf(segments);
    const last = segments.at(-1);
    const closing = last && endsSentence(last) ? pace.sentenceSeconds : 0;
    return { segments, text, seconds: speak(text, pace).seconds, pause: Math.max(closing, last?.breathAfter === "marked" ? pace.breathSeconds : 0) };
  }).filter(({ text }) => speak(text, pace).words > 0);
  // Sentences said alone need not add up to the line to the last hair; the line's own seconds count.
  const alone = parts.reduce((sum, { seconds, pause }, at) => sum + seconds + (at < parts.length - 1 ? pause : 0), 0);
  const factor = alone > 0 ? line.seconds / alone : 1;
  let at = line.from;
  return parts.map(({ segments, text, seconds, pause }, i) => {
    const row = { at, seconds: seconds * factor, overSeconds: Math.max(0, at + seconds * factor - ends), segments, pronounced: pronounced(text, pace.pronunciations), isMeasured: line.isMeasured, endsLine: i === parts.length - 1 };
    at += (seconds + pause) * factor;
    return row;
  });
}

/** Shots one after the other from the block's start, each beside the words said when it begins. */
function withShots(rows: readonly Omit<ScriptRow, "shots">[], block: Block, starts: number): { rows: ScriptRow[]; restShots: string[] } {
  let from = starts;
  const shots = shotsOf(block).filter(({ line }) => line.text.trim() !== "").map(({ line, shot }) => {
    const timed = { text: line.text.trim(), from };
    from += secondsOf(shot);
    return timed;
  });
  const beside = rows.map((): string[] => []);
  const restShots: string[] = [];
  for (const shot of shots) {
    const at = rows.findIndex((row) => row.at + row.seconds > shot.from);
    const mine = at < 0 ? restShots : beside[at];
    mine?.push(shot.text);
  }
  return { rows: rows.map((row, i) => ({ ...row, shots: beside[i] ?? [] })), restShots };
}

/**
 * The script as it is read: block by block, sentence by sentence, with running times, breaths, pronunciations and what is on screen,
 * if shots are cut one after the other in their order.
 * @param measured - lines that were read and timed; the others are counted at the pace
 */
export function scriptOf(episode: Episode, pace: Pace, measured?: MeasuredSeconds): ScriptBlock[] {
  const { blocks } = episodeClocks(episode, pace, measured).screen;
  let starts = 0;
  return episode.blocks.flatMap((block, index): ScriptBlock[] => {
    const clock = blocks[index];
    if (!clock) return [];
    const lines = spokenLines(block, clock.seconds, pace, measured).map(({ line, from, seconds }) => ({ text: line.text, from: starts + from, seconds, isMeasured: measured?.has(line.id) ?? false }));
    const made = { block, number: index + 1, name: withoutStars(blockName(block)), starts, clock, ...withShots(lines.flatMap((line) => rowsOf(line, pace, starts + clock.seconds)), block, starts) };
    starts += clock.seconds;
    return [made];
  });
}
