import type { Angle } from "../exercises";

/** How much of the body a shot shows, widest first. */
export const SHOT_SIZES = ["wide", "full", "medium", "close-up", "insert"] as const;
export type ShotSize = (typeof SHOT_SIZES)[number];

/** What a shot line says: "Side, full, set 2, 12 s: the whole arm path". Parts the text does not state are null. */
export interface Shot {
  readonly angle: Angle | null;
  readonly size: ShotSize | null;
  /** The working sets it is filmed on, from 1; null means any. */
  readonly sets: readonly number[] | null;
  /** Which kind of set. */
  readonly on: "ramp-up" | "working" | "demonstration" | null;
  readonly need: "must" | "nice";
  readonly seconds: number | null;
  /** What is to be seen. */
  readonly subject: string;
}

/** Where the camera stands for a shot. Metres; tilt in degrees, down is negative. */
export interface Stand {
  readonly distance: number;
  readonly height: number;
  readonly tilt: number;
  /** Distance in walking steps, to the half. */
  readonly steps: number;
  /** The body part the lens is level with: "hip", "chest". */
  readonly level: string;
}
