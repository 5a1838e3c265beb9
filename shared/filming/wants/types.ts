import type { Angle } from "../../exercises";
import type { Shot, ShotSize } from "../types";

/** One thing the finished video needs a picture (or a sound) of, whether a shot is planned for it or not. */
export interface EpisodeWant {
  /** Stays the same while what it comes from stays. */
  readonly id: string;
  /** The block it is filmed in; null when the episode has none for it. */
  readonly block: string | null;
  /** Part of a sentence: "the closing, to camera". */
  readonly what: string;
  readonly need: "must" | "nice";
  readonly on: "working" | "ramp-up" | "demonstration" | "any";
  /** The least that is useful. */
  readonly seconds: number;
  /** Where it is best seen from; `angles` are all that show it, best first. */
  readonly angle: Angle;
  readonly angles: readonly Angle[];
  readonly size: ShotSize;
  /** The same as a shot, and as a shot line that is ready to be put in. */
  readonly asked: Shot;
  readonly shot: string;
  /** The shot line that shows it; null when none does. */
  readonly coveredBy: string | null;
}
