import type { Units } from "../../episode";
import type { CoveragePlan, CoverageProblem } from "../../filming";

/** What the caller reads from disk and hands in: the page's program and its looks, as text. */
export interface PhonePage {
  readonly script: string;
  readonly style: string;
}

export interface PhoneSet {
  /** As the coverage plan names it. */
  readonly id: string;
  /** Counted through the block, from 1. */
  readonly place: number;
  readonly role: "ramp-up" | "working" | "demonstration" | "run";
  /** Counted within its role, from 1. */
  readonly number: number;
  /** "Set 2" */
  readonly name: string;
  readonly work: string;
  readonly load: string;
  readonly seconds: number;
  readonly restSeconds: number;
  /** What the plan asks for, to begin typing from; null where nothing is lifted. Load in the session's unit. */
  readonly planned: { readonly load: number | null; readonly reps: number | null; readonly rir: number | null } | null;
}

/** Where the tripod stands. Metres. */
export interface PhoneMark {
  readonly key: string;
  readonly letter: string;
  /** "from the side, head to toe" */
  readonly words: string;
  readonly distance: number;
  readonly steps: string;
  readonly height: number;
  /** "hip"; empty where no part of the body is level with the lens. */
  readonly level: string;
  /** "level", "12° down" */
  readonly tilt: string;
  /** What is in the way there: walls, mirrors, the aisle. Sentences. */
  readonly warnings: readonly string[];
}

export interface PhoneShot {
  /** As the coverage plan names it. */
  readonly id: string;
  /** Id of its shot line. */
  readonly line: string;
  readonly mark: string;
  readonly need: "must" | "nice";
  readonly seconds: number;
  /** What must be seen. */
  readonly subject: string;
  /** "Side, full" */
  readonly short: string;
}

/** Something to film that no shot line asks for. */
export interface PhoneExtra {
  readonly what: "opening" | "closing" | "room-tone";
  /** The block it belongs to; null for the end of the session. */
  readonly block: string | null;
  readonly words: string;
}

export interface PhoneBlock {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly station: string;
  readonly alternates: readonly string[];
  readonly cautions: readonly string[];
  readonly say: readonly string[];
  readonly sets: readonly PhoneSet[];
  readonly marks: readonly PhoneMark[];
  readonly shots: readonly PhoneShot[];
}

/** Everything the page knows: one session, ready to be carried to the gym. */
export interface PhoneSession {
  readonly version: 1;
  /** The episode's id. */
  readonly episode: string;
  /** Changes with anything the page plans with. */
  readonly plan: string;
  readonly title: string;
  readonly series: string;
  /** "Thursday 4 March 2027, 06:45", or what is known of it. */
  readonly when: string;
  readonly where: string;
  readonly units: Units;
  /** Start of the names of files that are handed back. */
  readonly stem: string;
  /** How the phone is held and which lens. */
  readonly hold: string;
  readonly kit: readonly string[];
  readonly reminders: readonly string[];
  readonly problem: CoverageProblem;
  readonly coverage: CoveragePlan;
  readonly blocks: readonly PhoneBlock[];
  readonly extras: readonly PhoneExtra[];
  /** Shots, by id, without which the session must not end unasked; an extra named "closing" stands for a closing nobody planned. */
  readonly closing: readonly string[];
}
