import type { BlockKind, Episode } from "../episode";
import type { CaptionProblem, Pace } from "../speech";

/** One word of the source, in its order. Nothing of the source is outside its words but times, tags and blank space. */
export interface Word {
  /** As it stands in the source, signs included. */
  readonly text: string;
  /** Lower case, plain apostrophes, no signs around it; empty for a sign alone. */
  readonly plain: string;
  /** Seconds in the video; null where the source has no times. */
  readonly start: number | null;
  readonly end: number | null;
  /** Silence before it, seconds; 0 where unknown. */
  readonly pause: number;
  /** What the source shows before it: a new caption, a new line, an empty line. */
  readonly edge: "none" | "cue" | "line" | "paragraph";
}

/** A stretch of words, `to` not included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Why a piece of the source is listed. */
export type Reason = "sound" | "comment" | "hesitation" | "no name" | "scheme" | "range" | "too much";

/** A piece of the source that the draft does not hold, or holds without having understood it. */
export interface NotUnderstood {
  readonly text: string;
  readonly reason: Reason;
  /** One sentence for people. */
  readonly sentence: string;
  /** Seconds in the video, or null. */
  readonly at: number | null;
  /** The block it stands in, or null. */
  readonly block: string | null;
}

/** How fast the speaker was, silent stretches left out. */
export interface MeasuredPace {
  readonly wordsPerMinute: number;
  /** Syllables a second of speech, short pauses between phrases included. */
  readonly syllablesPerSecond: number;
  /** Seconds of speech measured, and of silence left out. */
  readonly speechSeconds: number;
  readonly silentSeconds: number;
  /** The same as the screen clock counts it, pauses apart; null where the figures cannot be right. */
  readonly own: Pace | null;
}

/** What was made of one source. */
export interface Imported {
  readonly ok: true;
  readonly episode: Episode;
  readonly format: "webvtt" | "subrip" | "timed lines" | "speech" | "notes";
  readonly words: number;
  readonly sentences: number;
  readonly pace: MeasuredPace | null;
  /** Parts of an episode that were not recognised. */
  readonly missing: readonly BlockKind[];
  readonly notUnderstood: readonly NotUnderstood[];
  /** What was wrong with the file itself. */
  readonly problems: readonly CaptionProblem[];
}

export interface Refused {
  readonly ok: false;
  readonly code: "empty" | "too-big" | "not-text" | "too-long";
  readonly message: string;
}

export type ImportResult = Imported | Refused;
