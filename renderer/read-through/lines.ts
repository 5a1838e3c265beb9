import type { Take, Voice } from "../../shared/bridge";
import { blockName, linesOf, type Episode } from "../../shared/episode";
import { ownPace, paceOf, speak, type Pace } from "../../shared/speech";

/** A say line to read. */
export interface LineToRead {
  readonly line: string;
  readonly text: string;
  /** "3 Goblet squat" and which of its lines. */
  readonly block: string;
  readonly number: number;
  /** Seconds counted for it. */
  readonly planned: number;
}

/** The say lines of an episode that have words, in order. */
export function linesToRead(episode: Episode, own: Pace): LineToRead[] {
  const pace = paceOf(episode, own);
  return episode.blocks.flatMap((block, b) =>
    linesOf(block, "say").filter(({ text }) => /[\p{L}\p{N}]/u.test(text)).map((line, i) => ({
      line: line.id, text: line.text, block: `${b + 1} ${blockName(block)}`, number: i + 1, planned: speak(line.text, pace).seconds,
    })));
}

/** The start of a take's file name. */
export const takeName = ({ block, number }: LineToRead): string => `${block} line ${number}`;

/** The takes of one line, oldest first, and the one that counts: for these very words, and measured. */
export function takesOf(takes: readonly Take[], { line, text }: Pick<LineToRead, "line" | "text">): { all: Take[]; chosen: Take | null; counts: Take | null } {
  const all = takes.filter((take) => take.line === line);
  const chosen = all.find((take) => take.chosen) ?? null;
  return { all, chosen, counts: chosen !== null && chosen.seconds !== null && chosen.text === text ? chosen : null };
}

/** Less than this says little about a pace. */
const LEAST_LINES = 3;
const LEAST_SECONDS = 12;
/** A take this many times slower or faster than the middle one was read otherwise: a slip, a pause to think. */
const STRAYS = 1.5;

export type Learned = { readonly ok: true; readonly voice: Voice; readonly leftOut: number } | { readonly ok: false; readonly sentence: string };

const middle = (numbers: readonly number[]): number => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 1;

/**
 * The reader's own pace from the takes that count.
 * @param base - the usual pace, whose pauses are kept; with the series' pronunciations
 * @param at - now, ISO
 */
export function learnPace(takes: readonly Pick<Take, "text" | "seconds">[], base: Pace, at: string): Learned {
  const read = takes.flatMap(({ text, seconds }) => {
    const planned = speak(text, base).seconds;
    return seconds !== null && seconds > 0 && planned > 0 ? [{ text, seconds, planned, ratio: seconds / planned }] : [];
  });
  const usual = middle(read.map(({ ratio }) => ratio));
  const kept = read.filter(({ ratio }) => ratio <= usual * STRAYS && ratio >= usual / STRAYS);
  const seconds = kept.reduce((sum, one) => sum + one.seconds, 0);
  if (kept.length < LEAST_LINES || seconds < LEAST_SECONDS) {
    return { ok: false, sentence: `Your pace is measured from ${LEAST_LINES} lines and ${LEAST_SECONDS} seconds on; so far ${kept.length === 0 ? "nothing was" : `${kept.length} ${kept.length === 1 ? "line, " : "lines, "}${seconds.toFixed(1)} seconds were`} read.` };
  }
  const text = kept.map((one) => one.text).join(" / ");
  // Read one by one, the lines have no pauses between them; the joined text counts some.
  const between = speak(text, base).seconds - kept.reduce((sum, { planned }) => sum + planned, 0);
  const pace = ownPace(text, seconds + between, base);
  if (!pace) return { ok: false, sentence: "These lengths cannot be speech at any pace: read some lines again." };
  const { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds } = pace;
  return { ok: true, leftOut: read.length - kept.length, voice: { pace: { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds }, lines: kept.length, seconds, at } };
}
