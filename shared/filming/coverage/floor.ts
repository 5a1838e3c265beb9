import { bitOf } from "./demand";
import type { CoverageSet } from "./types";

/** What is filmed in which order and where the rests are, as numbers. */
export interface Floor {
  readonly cameras: number;
  /** Kind of each set, as a bit. */
  readonly sets: readonly number[];
  /** Extra microseconds of 0, 1, 2 moves in the rest after each set but the last. */
  readonly rests: readonly (readonly number[])[];
}

export const restCosts = (cameras: number, moveMicros: number, restMicros: number): number[] =>
  Array.from({ length: cameras + 1 }, (_, moves) => Math.max(0, moves * moveMicros - restMicros));

export const floorOf = (cameras: number, sets: readonly CoverageSet[], restMicros: readonly number[], moveMicros: number): Floor => ({
  cameras,
  sets: sets.map(({ kind }) => bitOf(kind)),
  rests: restMicros.slice(0, -1).map((rest) => restCosts(cameras, moveMicros, rest)),
});
