import { syllablesOf, type Cue } from "../../speech";
import type { Word } from "../types";

const bare = (text: string): string => text.normalize("NFC").toLowerCase().replace(/[’‘ʼ`´]/g, "'").replace(/^[^\p{L}\p{N}%°½¼¾]+|[^\p{L}\p{N}%°½¼¾]+$/gu, "");

/** A word's share of its caption's time; figures are said longer than they are written. */
const weightOf = (word: string): number => Math.max(1, syllablesOf(word)) + (/\d/.test(word) ? 1 : 0);

const wordOf = (text: string, edge: Word["edge"], times: Pick<Word, "start" | "end" | "pause">): Word => ({ text, plain: bare(text), edge, ...times });

/** The words of text without times; line breaks and empty lines are kept as edges. */
export function wordsOfText(text: string): Word[] {
  const words: Word[] = [];
  let edge: Word["edge"] = "none";
  for (const [row, line] of text.split(/\r\n|\n|\r/).entries()) {
    if (line.trim() === "") {
      edge = "paragraph";
      continue;
    }
    if (row > 0 && edge === "none") edge = "line";
    for (const piece of line.trim().split(/\s+/)) {
      words.push(wordOf(piece, words.length === 0 ? "none" : edge, { start: null, end: null, pause: 0 }));
      edge = "none";
    }
  }
  return words;
}

/**
 * The words of captions, each with its share of the caption's time.
 * A caption that stays on screen long after its words were said is taken to be silent at its end.
 * @param secondsOf - how long words take at a usual pace
 */
export function wordsOfCues(cues: readonly Cue[], secondsOf: (text: string) => number): Word[] {
  const words: Word[] = [];
  let before: number | null = null;
  for (const [index, cue] of cues.entries()) {
    const { start, text } = cue;
    // Where captions overlap, a caption's words were said before the next one's.
    const next = cues[index + 1]?.start ?? Infinity;
    const end = next > start ? Math.min(cue.end, next) : cue.end;
    const pieces = text.split(/\s+/).filter((piece) => piece !== "");
    const whole = pieces.reduce((sum, piece) => sum + weightOf(piece), 0);
    const usual = secondsOf(text);
    const spoken = end - start > 2 * usual + 1 ? Math.min(end - start, 1.2 * usual) : end - start;
    let at = start;
    pieces.forEach((piece, place) => {
      const until = at + (spoken * weightOf(piece)) / whole;
      const pause = place === 0 && before !== null ? Math.max(0, start - before) : 0;
      words.push(wordOf(piece, place === 0 && words.length > 0 ? "cue" : "none", { start: at, end: until, pause }));
      at = until;
    });
    if (pieces.length > 0) before = at;
  }
  return words;
}

/** Words as they stand in the source. */
export const textIn = (words: readonly Word[], from: number, to: number): string => words.slice(from, to).map(({ text }) => text).join(" ");

/** The plain words of a stretch; signs alone are none. */
export const plainIn = (words: readonly Word[], from: number, to: number): string[] => words.slice(Math.max(0, from), to).flatMap((word) => (word.plain === "" ? [] : [word.plain]));
