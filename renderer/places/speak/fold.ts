import { clock, seconds as secondsWords } from "../../words/clock";
import type { PlacedLine } from "../../voiceover/timeline";

/** A word in a row: pixels from the row's left edge. */
export interface RowWord {
  readonly index: number;
  readonly text: string;
  readonly x: number;
  /** It is not spoken to its end when the clip ends. */
  readonly hangs: boolean;
  /** It is longer than what is left of its row and is cut off there. */
  readonly isCut: boolean;
}

/** A pause in a row: pixels. */
export interface RowBreath {
  readonly afterWord: number;
  readonly x: number;
  readonly why: "marked" | "sentence" | "suggested";
}

/** One row of a folded ruler. */
export interface Row {
  /** Seconds from the clip's start to the row's left edge. */
  readonly from: number;
  readonly words: readonly RowWord[];
  readonly breaths: readonly RowBreath[];
  /** Where there is speech, as pixels. */
  readonly speech: readonly { readonly x: number; readonly width: number }[];
  /** The clip's end, when it lies in this row: pixels to it and to the words that say so. The end of the clip belongs to the row it closes. */
  readonly end: { readonly x: number; readonly words: string; readonly wordsX: number } | null;
  /** Pixels of the row behind the clip's end and up to the last word. */
  readonly over: { readonly x: number; readonly width: number } | null;
  /** Room to stay quiet after the last word, at its length as far as the row goes; its words stand beside those that are said, or below the ruler, and nowhere where neither has room. */
  readonly quiet: { readonly x: number; readonly width: number; readonly words: string; readonly wordsX: number | null; readonly isBelow: boolean } | null;
  /** Whole fives of clip seconds in this row, but for those whose figures would stand on other words: pixels to the second and to its figures. */
  readonly marks: readonly { readonly x: number; readonly seconds: number; readonly wordsX: number }[];
}

export interface FoldSize {
  /** Seconds and pixels of one row. */
  readonly rowSeconds: number;
  readonly width: number;
  /** How wide a word is as drawn; pixels. */
  readonly measure: (text: string) => number;
}

/** Second text and the figures below a ruler are so much smaller than words that are said; the clip's end is in a wider cut. */
const SECOND_SIZE = 0.84375 / 1.03125;
const MARK_SIZE = 0.75 / 1.03125;
const END_SIZE = MARK_SIZE * 1.1;
/** Space between two words that would touch; pixels. */
const GAP = 5;
/** A mark on the ruler every so many seconds. */
const MARK_EVERY = 5;
/** Finer than this nothing is drawn; without it a line that only moves in time would be written anew for the last digit. */
const fine = (pixels: number): number => Math.round(pixels * 1024) / 1024;
/** A mark's figures stand in the middle of its second, but close to the row's edge right of it; pixels. */
const AT_EDGE = 16;
/** What marks a breath that would help. */
const STROKE = "(/)";

/** Pixels a spoken syllable takes when its letters have room, at a text size of 1 rem = 16 px. Measured on our demo's words. */
const SYLLABLE_PIXELS = 36;

/**
 * Seconds of one row, so that words set where they are spoken do not run into each other.
 * @param rem - the text size in pixels
 */
export function rowSecondsFor(width: number, syllablesPerSecond: number, rem: number): number {
  return Math.max(2, Math.min(12, Math.floor(width / (syllablesPerSecond * SYLLABLE_PIXELS * (rem / 16)))));
}

/** How many rows a line takes; `until` as in `foldLine`. */
export function rowCount(line: Pick<PlacedLine, "seconds">, from: number, until: number, rowSeconds: number): number {
  return Math.max(1, Math.ceil((Math.max(from + line.seconds, until) - from) / rowSeconds - 1e-6));
}

/**
 * Folds a line's ruler into rows. A word stands where it is spoken, or right after the one before it where letters take more room
 * than their seconds give; such words catch up in the next pause.
 * @param from - when the line's first word is spoken, seconds from the clip's start
 * @param length - of the clip; seconds
 * @param until - the row goes on at least to here, so that the pause to the next line is seen; seconds from the clip's start
 * @param quiet - seconds of silence that would be fine after the line; whole ones are drawn
 */
export function foldLine(line: PlacedLine, from: number, length: number, until: number, { rowSeconds, width, measure }: FoldSize, quiet = 0): Row[] {
  const scale = width / rowSeconds;
  /** Words with a stroke behind them. */
  const strokes = new Set(line.breaths.filter(({ why }) => why !== "sentence").map(({ afterWord }) => afterWord));
  const end = Math.max(from + line.seconds, until);
  const count = rowCount(line, from, until, rowSeconds);
  const rows: Row[] = [];
  /** The end's words stand right of it, or left of it where the row is over. */
  const endAt = (x: number): Row["end"] => {
    const words = `${length >= 60 ? clock(length) : `${secondsWords(length)} s`}, clip ends`;
    const wide = measure(words) * END_SIZE;
    return { x, words, wordsX: fine(x + GAP + wide <= width ? x + GAP : Math.max(0, x - GAP - wide)) };
  };
  /** From where to where the end and its words stand. */
  const spanOf = ({ x, words, wordsX }: NonNullable<Row["end"]>): readonly [number, number] => [Math.min(x, wordsX), Math.max(x, wordsX + measure(words) * END_SIZE)];
  const roomFor = (seconds: number, bar: { x: number; width: number } | null, free: number, end: Row["end"]): Row["quiet"] => {
    if (seconds < 1 || bar === null) return null;
    const words = `room for ${Math.floor(seconds)} s of quiet`;
    const wide = measure(words) * SECOND_SIZE;
    const beside = Math.max(free + GAP, bar.x + GAP);
    if (beside + wide <= width) return { ...bar, words, wordsX: fine(beside), isBelow: false };
    const [left, right] = end ? spanOf(end) : [Infinity, Infinity];
    const below = [width - wide, left - GAP - wide].find((at) => at >= 0 && (at + wide + GAP <= left || at >= right + GAP));
    return { ...bar, words, wordsX: below === undefined ? null : fine(below), isBelow: true };
  };
  let next = 0;
  for (let i = 0; i < count; i++) {
    const start = from + i * rowSeconds;
    const stop = start + rowSeconds;
    const isLast = i === count - 1;
    const x = (seconds: number): number => fine((seconds - start) * scale);
    const words: RowWord[] = [];
    let free = 0;
    for (let word = line.words[next]; word && (isLast || from + word.from < stop - 1e-6); word = line.words[++next]) {
      const at = Math.max(free, x(from + word.from));
      const wide = fine(measure(word.text));
      // A word that would leave the row though it begins inside it moves to the next; the first word always stays.
      if (!isLast && words.length > 0 && at + wide > width + 2) break;
      words.push({ index: next, text: word.text, x: at, hangs: from + word.to > length + 0.1, isCut: at + wide > width + 4 });
      free = at + wide + GAP + (strokes.has(next) ? measure(STROKE) + GAP : 0);
    }
    const clip = (a: number, b: number): { x: number; width: number } | null => {
      const [left, right] = [Math.max(0, x(a)), Math.min(width, x(b))];
      return right - left > 0.5 ? { x: left, width: right - left } : null;
    };
    const speech = line.stretches.flatMap((stretch) => clip(from + stretch.from, from + stretch.to) ?? []);
    const breaths = line.breaths.flatMap((breath) => {
      const place = words.findIndex(({ index }) => index === breath.afterWord);
      const word = words[place];
      if (!word) return [];
      // In the pause, and clear of the words on both sides where that is short.
      const next = words[place + 1];
      const last = next ? next.x - GAP - measure(STROKE) : Infinity;
      return [{ afterWord: breath.afterWord, why: breath.why, x: fine(Math.max(word.x + measure(word.text) + GAP, Math.min(x(from + breath.from), last))) }];
    });
    const hasEnd = length > start && length <= stop + 1e-6 && length <= Math.max(end, from + line.seconds) + 1e-6;
    const endHere = hasEnd ? endAt(x(length)) : null;
    const room = isLast ? roomFor(quiet, clip(from + line.seconds, from + line.seconds + quiet), free, endHere) : null;
    // Below the ruler one thing stands at a place: the clip's end and the room to be quiet say more than a mark.
    const taken = [
      ...(endHere ? [spanOf(endHere)] : []),
      ...(room?.isBelow && room.wordsX !== null ? [[room.wordsX, room.wordsX + measure(room.words) * SECOND_SIZE] as const] : []),
    ];
    const firstMark = Math.ceil(start / MARK_EVERY - 1e-6) * MARK_EVERY;
    const marks = Array.from({ length: Math.max(0, Math.floor((stop - firstMark - 1e-6) / MARK_EVERY) + 1) }, (_, n) => firstMark + n * MARK_EVERY).flatMap((seconds) => {
      const [at, wide] = [x(seconds), measure(clock(seconds)) * MARK_SIZE];
      const wordsX = fine(at < AT_EDGE ? at : at - wide / 2);
      // The line's own time stands beside its first row; a mark right at its edge would say it twice.
      if (i === 0 && at < AT_EDGE) return [];
      return taken.some(([left, right]) => wordsX < right + GAP && wordsX + wide > left - GAP) ? [] : [{ seconds, x: at, wordsX }];
    });
    rows.push({ from: start, words, breaths, speech, marks, quiet: room, end: endHere, over: clip(Math.max(length, start), Math.min(stop, from + line.seconds)) });
  }
  return rows;
}
