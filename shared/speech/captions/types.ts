/** One caption: what is read while it is on screen. */
export interface Cue {
  /** Seconds from the start of the video. */
  readonly start: number;
  readonly end: number;
  /** Plain words, no tags; lines parted by line feeds, no line empty. */
  readonly text: string;
}

/** Something in a file that is not as it should be, in a sentence for people. */
export interface CaptionProblem {
  /** Counted from 1. */
  readonly line: number;
  readonly sentence: string;
}

/** Text of a file that is no caption: a comment, or words that stand at no time. */
export interface CaptionAside {
  readonly line: number;
  readonly kind: "comment" | "untimed";
  readonly text: string;
}

export interface CaptionsRead {
  readonly format: "webvtt" | "subrip" | "timed lines" | "none";
  /** In the order of the file, even where its times go backwards. */
  readonly cues: readonly Cue[];
  readonly problems: readonly CaptionProblem[];
  /** What is in no cue, so that nothing is lost. */
  readonly asides: readonly CaptionAside[];
}
