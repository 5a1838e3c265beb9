import type { Block, Edit, Episode, Line, NewId, Waiver } from "../episode";
import type { EpisodeClocks } from "../clocks";

export type CheckLevel = "stop" | "fix" | "consider";
export type Moment = "before filming" | "before speaking" | "before publishing";

/** Where a rule comes from. `at` is section, page or clause; an unpublished habit says so in the title. */
export interface RuleSource {
  readonly title: string;
  readonly at?: string;
}

/** A change that mends a finding. `label` says what it will do: "Adds an 8-minute warm-up block with six joints". */
export interface Remedy {
  readonly label: string;
  readonly edits: readonly Edit[];
}

/** What one rule reports. Blocks, lines and words are pointed at by id and range. */
export interface Finding {
  /** Stable while the same words are at fault: rule, block, line and words. */
  readonly key: string;
  readonly rule: string;
  readonly ruleVersion: number;
  readonly level: CheckLevel;
  readonly moment: Moment;
  /** One sentence: found, expected, what to do. */
  readonly message: string;
  readonly why: string;
  readonly source: RuleSource;
  readonly block: string | null;
  /** Id of the line, set line or alternate. */
  readonly line: string | null;
  /** Characters of the line's text; null for the whole line. */
  readonly range: { readonly start: number; readonly end: number } | null;
  /** The words at fault, as waivers remember them. */
  readonly words: string;
  readonly remedies: readonly Remedy[];
  /** Set when the coach waived it; such findings are listed apart and stop nothing. */
  readonly waiver: Waiver | null;
}

/** What a rule may look at. */
export interface CheckContext {
  readonly episode: Episode;
  readonly clocks: EpisodeClocks;
  /** Now as an ISO date and time with zone; the core has no clock. */
  readonly now: string;
  /** For remedies that add blocks or lines. */
  readonly newId: NewId;
}

/** A line with the block it stands in. */
export interface PlacedLine {
  readonly block: Block;
  readonly line: Line;
}
