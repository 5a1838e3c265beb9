import type { Take, Voice } from "../../shared/bridge";
import { blockName, linesOf, type Episode } from "../../shared/episode";
import { fitPace, paceOf, ranOn, saidWords, speak, type Pace, type PaceSample } from "../../shared/speech";
import { count } from "../words/count";

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

const secondsOf = (read: readonly PaceSample[]): number => read.reduce((sum, { seconds }) => sum + seconds, 0);

/** By how much a line's seconds miss those of a pace, as a share of them. */
function missOf({ text, seconds, withPause = false }: PaceSample, pace: Pace): number {
  const pause = withPause ? (saidWords(text, pace).at(-1)?.pauseSeconds ?? 0) : 0;
  return Math.abs(seconds / (speak(text, pace).seconds + pause) - 1);
}

/** The lines that agree on a pace, and that pace: those far from the others are left out, the farthest first, until none is. */
function agreeing(read: readonly PaceSample[], base: Pace): { readonly used: readonly PaceSample[]; readonly pace: Pace | null } {
  const fit = fitPace(read, base);
  if (!fit || fit.left === 0) return { used: read, pace: fit?.pace ?? null };
  const nearest = [...read].sort((a, b) => missOf(a, fit.pace) - missOf(b, fit.pace)).slice(0, fit.used);
  return agreeing(nearest, base);
}

/** Why no pace is known yet. */
function tooLittle(read: readonly PaceSample[], used: readonly PaceSample[]): string {
  const least = `Your pace is measured from ${LEAST_LINES} lines and ${LEAST_SECONDS} seconds on`;
  const figures = (of: readonly PaceSample[]): string => `${count(of.length, "line")}, ${secondsOf(of).toFixed(1)} seconds`;
  if (read.length === 0) return `${least}; so far nothing was read.`;
  if (used.length === read.length) return `${least}; so far ${figures(read)} were read.`;
  return `${least} that go at much the same pace; of ${figures(read)}, only ${figures(used)} do. Read the others again, or more lines.`;
}

/**
 * The reader's own pace from the takes that count.
 * @param all - every take there is: a line's tap may have begun one that does not count
 * @param base - the usual pace, with the series' pronunciations
 * @param at - now, ISO
 */
export function learnPace(counted: readonly Take[], all: readonly Take[], base: Pace, at: string): Learned {
  const read = counted.flatMap((take) => (take.seconds !== null && take.seconds > 0 ? [{ text: take.text, seconds: take.seconds, withPause: ranOn(take, all) }] : []));
  const { used, pace } = agreeing(read, base);
  const seconds = secondsOf(used);
  if (used.length < LEAST_LINES || seconds < LEAST_SECONDS) return { ok: false, sentence: tooLittle(read, used) };
  if (!pace) return { ok: false, sentence: "These lengths cannot be speech at any pace: read some lines again." };
  const { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds } = pace;
  return { ok: true, leftOut: read.length - used.length, voice: { pace: { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds }, lines: used.length, seconds, at } };
}
