import type { Take, Voice } from "../../shared/bridge";
import { blockName, linesOf, type Episode } from "../../shared/episode";
import { fitPace, paceOf, ranOn, speak, type Pace } from "../../shared/speech";

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
export type Learned = { readonly ok: true; readonly voice: Voice; readonly leftOut: number } | { readonly ok: false; readonly sentence: string };

/**
 * The reader's own pace from the takes that count.
 * @param all - every take there is: a line's tap may have begun one that does not count
 * @param base - the usual pace, with the series' pronunciations
 * @param at - now, ISO
 */
export function learnPace(counted: readonly Take[], all: readonly Take[], base: Pace, at: string): Learned {
  const read = counted.flatMap((take) => (take.seconds !== null && take.seconds > 0 ? [{ text: take.text, seconds: take.seconds, withPause: ranOn(take, all) }] : []));
  const seconds = read.reduce((sum, one) => sum + one.seconds, 0);
  if (read.length < LEAST_LINES || seconds < LEAST_SECONDS) {
    return { ok: false, sentence: `Your pace is measured from ${LEAST_LINES} lines and ${LEAST_SECONDS} seconds on; so far ${read.length === 0 ? "nothing was" : `${read.length} ${read.length === 1 ? "line, " : "lines, "}${seconds.toFixed(1)} seconds were`} read.` };
  }
  const fit = fitPace(read, base);
  if (!fit) return { ok: false, sentence: "These lengths cannot be speech at any pace: read some lines again." };
  const { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds } = fit.pace;
  return { ok: true, leftOut: fit.left, voice: { pace: { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds }, lines: fit.used, seconds, at } };
}
