import type { Edit } from "../../episode";
import type { Spoken } from "../types";

/** Why a sentence may go: said before, about something else, padded with words that say nothing, or the longest without a pause. */
export type CutReason = "repeated" | "filler" | "off cue" | "longest without a pause";

/** One way of saying less. */
export interface CutSuggestion {
  readonly reason: CutReason;
  readonly line: string;
  /** The sentence as it stands, and as it would; empty when it goes. */
  readonly sentence: string;
  readonly becomes: string;
  /** In words for the coach. */
  readonly why: string;
  readonly savesSeconds: number;
  readonly savesWords: number;
  /** What does it, as one undo step. Empty where only the coach can find shorter words. */
  readonly edits: readonly Edit[];
}

/** Silence with nothing wrong about it. */
export interface QuietPlace {
  /** The say line it follows; null before the first word. */
  readonly after: string | null;
  readonly seconds: number;
}

/** A block's words against its clip. Seconds. */
export interface BlockFit {
  readonly block: string;
  readonly clipSeconds: number | null;
  readonly spoken: Spoken;
  /** Beyond the clip, and short of it; one of them is 0, both without a clip. */
  readonly overSeconds: number;
  readonly underSeconds: number;
  readonly wordsToCut: number;
  /** Best first. Given also when all fits, for those who want more air. */
  readonly suggestions: readonly CutSuggestion[];
  /** Where the free seconds may stay silent; empty when there are none. */
  readonly quiet: readonly QuietPlace[];
}
