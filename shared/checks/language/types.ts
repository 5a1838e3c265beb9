/** Everything the reader can say about a piece of coaching text. The first eleven are about safety, the rest about claims and conduct. */
export const CUE_LABELS = [
  "spine-under-load", "joint-lockout", "breath-hold", "pain-push", "ballistic-or-bounce", "neck-position", "knee-tracking",
  "overextension", "load-jump", "no-spotter", "failure-unsafe",
  "claim-spot-reduction", "claim-guarantee", "claim-medical", "diet-extreme", "shame", "disclosure-missing", "population-risk",
] as const;
export type CueLabelName = (typeof CUE_LABELS)[number];

export type CueSlot = "cue" | "voiceover" | "safety" | "description";
export type CueAudience = "general" | "beginner" | "pregnant" | "older" | "teen";

/** A piece of coaching text and what is known about where it stands. */
export interface CueInput {
  readonly text: string;
  /** A movement family, or "general" when the text is about no exercise. */
  readonly family: string;
  readonly slot: CueSlot;
  readonly audience: CueAudience;
  /** The exercise as people call it, or null. */
  readonly exercise: string | null;
}

/** One thing found. `start` and `end` are characters of the text. */
export interface CueLabel {
  readonly label: CueLabelName;
  readonly start: number;
  readonly end: number;
  /** "grammar": said in so many words. "likeness": it reads like lines that were judged so. */
  readonly by: "grammar" | "likeness";
  /** Why this is a finding, in one sentence for people. */
  readonly ruling: string;
}

/** A line of the training corpus: a piece of coaching text with the labels that a person gave it. */
export interface JudgedLine extends CueInput {
  readonly labels: readonly CueLabelName[];
}

/** One way a label shows itself. */
export interface Pattern {
  /** In the template language of template.ts. */
  readonly find: string;
  /** A sentence it reads; the tests run it. */
  readonly example: string;
  /** The family the example is read in; the first of `only`, or "general". */
  readonly family?: string;
  /**
   * "fault": wrong to do, so that a prohibition or a warning silences it.
   * "state": a fault described, not asked for; it counts only where the text permits it or says to carry on with it.
   * "flat": already complete with its own negation ("no need to breathe"), so that only a quote or a rejection silences it.
   */
  readonly as?: "fault" | "state" | "flat";
  /** Families in which it counts; every family when left out. */
  readonly only?: readonly string[];
  readonly not?: readonly string[];
  /** Counts only where the exercise or the text names an outside load. */
  readonly loaded?: true;
  /** A second template the text must hold, or must not hold, anywhere. */
  readonly with?: string;
  readonly without?: string;
  readonly audience?: readonly CueAudience[];
}

/** One label: its patterns, the safe habits whose dismissal counts, and lines that must stay silent. */
export interface LabelReader {
  readonly label: CueLabelName;
  /** What the label means, in one sentence for people. */
  readonly ruling: string;
  readonly patterns: readonly Pattern[];
  readonly habits?: readonly Pattern[];
  readonly silent: readonly { readonly text: string; readonly family?: string }[];
}
