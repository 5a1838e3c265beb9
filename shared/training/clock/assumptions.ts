import type { SetRole } from "../../episode";

/**
 * What the gym clock takes for granted where the episode says nothing. Seconds unless named otherwise.
 * All of it is common practice without a source, except where one stands beside it.
 */
export const ASSUMED = {
  /** Lowering, pause, lifting, pause of a rep without a tempo: 3 s. @source ACSM 2009: 1-2 s up and 1-2 s down */
  phases: [2, 0, 1, 0],
  /** X in a tempo, as fast as control allows. A convention of tempo sums. */
  fastLift: 1,
  changeOfSide: 15,
  /** Metres a second with weights in the hands. */
  carryPace: 1.2,
  /** Reps of a set that asks for as many as possible. */
  amrapReps: 12,
  /** Taking weight off before a drop. */
  drop: 10,
  rest: { "ramp-up": 60, working: 90 } satisfies Record<SetRole, number>,
  /** Of an exercise the catalogue does not know. */
  setUp: 60,
  changeOfStation: 60,
  /** An opening, a closing or a talk with lines but without minutes. */
  talk: 60,
  /** A warm-up or cool-down with lines but without minutes and sets. @source ACSM Guidelines: 5-10 min, the lower end */
  warmUp: 300,
} as const;
