import { linesOf, type Episode } from "../../episode";
import { LEAST_SECONDS, slowedPace } from "../fit-pace";
import { DEFAULT_PACE } from "../pace";
import { saidWords } from "../said-words";
import { speak, spokenTogether } from "../speak";
import type { Pace, Spoken } from "../types";
import { refused, type Recording, type RecordingRefused } from "./types";

/** What a recording tells of a speaker's pace. Seconds. */
export interface RecordedPace {
  readonly ok: true;
  readonly pace: Pace;
  /** Speech with the pauses that belong to it. */
  readonly speechSeconds: number;
  /** What was left out: before the first word, after the last, and where somebody stopped for longer than a sentence's end. */
  readonly silentSeconds: number;
}

/** A silence so many times as long as a sentence's pause is no part of speaking (0.9 s at the usual pace): it counts as that pause. Common practice, no source. */
const LONG_PAUSE = 1.5;
/** Nobody reads lines aloud faster or slower than this against the usual pace, some 80 to 240 words a minute: then other words were read. Common practice, no source. */
const FACTORS = { least: 0.6, most: 1.8 } as const;

const hasWords = (text: string): boolean => /[\p{L}\p{N}]/u.test(text);

/** The lines of an episode that are spoken, in order. */
export const linesAloud = (episode: Episode): string[] => episode.blocks.flatMap((block) => linesOf(block, "say").map(({ text }) => text)).filter(hasWords);

/** Lines read one after the other, a sentence's pause between them. */
export const readAloud = (lines: readonly string[], pace: Pace = DEFAULT_PACE): Spoken => spokenTogether(lines.map((text) => speak(text, pace)), pace.sentenceSeconds);

/**
 * The pace at which lines were read aloud, from a recording of all of them in order: one factor on words and pauses alike.
 *
 * Known limit: a silence inside a sentence counts like one between two.
 * @param base - the usual pace, with the series' pronunciations
 */
export function paceOfRecording(lines: readonly string[], { seconds, heard }: Pick<Recording, "seconds" | "heard">, base: Pace = DEFAULT_PACE): RecordedPace | RecordingRefused {
  const said = lines.filter(hasWords);
  if (said.length === 0) return refused("no-words", "There are no words the recording could be a reading of.");
  const planned = readAloud(said, base).seconds;
  const words = said.reduce((sum, text) => sum + saidWords(text, base).reduce((all, word) => all + word.seconds, 0), 0);
  // The sound alone tells about how fast this is, and with it how long a sentence's pause is here.
  const pause = base.sentenceSeconds * Math.max(FACTORS.least, Math.min(FACTORS.most, heard.voicedSeconds / words));
  const pauses = heard.pauses.map(({ from, to }) => (to - from > LONG_PAUSE * pause ? pause : to - from));
  const speechSeconds = heard.voicedSeconds + pauses.reduce((sum, one) => sum + one, 0);
  const factor = speechSeconds / planned;
  const facts = `About ${speechSeconds.toFixed(0)} s of speech ${said.length === 1 ? "are heard, and this line takes" : `are heard, and these ${said.length} lines take`} ${planned.toFixed(0)} s at a usual pace`;
  if (speechSeconds < LEAST_SECONDS || factor < FACTORS.least) return refused("too-little", `${facts}: too little for a pace. Read every line, and hand over the whole recording.`);
  if (factor > FACTORS.most) return refused("too-much", `${facts}: too much for these words. Cut out what else was said, and what was said twice.`);
  return { ok: true, pace: slowedPace(base, factor), speechSeconds, silentSeconds: Math.max(0, seconds - speechSeconds) };
}
