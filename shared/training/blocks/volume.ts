import type { Episode } from "../../episode";
import { exerciseById, type Muscle } from "../../exercises";
import { plannedSets } from "../clock/planned-sets";

/** The ways sets of a muscle are counted: an indirect set counts in full, by half, or not at all. */
export const SET_COUNTS = ["total", "fractional", "direct"] as const;
export type SetCount = (typeof SET_COUNTS)[number];

const INDIRECT_SHARE: Readonly<Record<SetCount, number>> = { total: 1, fractional: 0.5, direct: 0 };

/**
 * Sets of one muscle as one number.
 * @param direct - sets of exercises that train the muscle itself
 * @param indirect - sets of exercises that it helps in
 * @source Pelland et al., The Resistance Training Dose-Response, preprint 2024: of the three ways "fractional" fitted best
 */
export function countSets(direct: number, indirect: number, way: SetCount = "fractional"): number {
  return direct + INDIRECT_SHARE[way] * indirect;
}

/**
 * The band of sets per muscle and WEEK in which growth was compared; more sets, more growth, though less for each further set.
 * Half sets belong to the band below the next whole one. One episode is seldom a week.
 * @throws {RangeError} when the number is negative or not finite
 * @source Schoenfeld, Ogborn & Krieger, J Sports Sci 35(11):1073-1082, 2017
 */
export function weeklyBand(sets: number): "under 5" | "5 to 9" | "10 or more" {
  if (!(sets >= 0) || !Number.isFinite(sets)) throw new RangeError(`Sets in a week are a number from 0, not ${sets}`);
  return sets < 5 ? "under 5" : sets < 10 ? "5 to 9" : "10 or more";
}

/** Working sets an episode gives one muscle. */
export interface MuscleSets {
  readonly muscle: Muscle;
  readonly direct: number;
  readonly indirect: number;
  /** Both together, counted fractionally. */
  readonly counted: number;
}

/**
 * Working sets per muscle, most first, ties in the order of the alphabet. Ramp-up sets, set lines that cannot be read, and blocks
 * whose exercise the catalogue does not know count nothing.
 */
export function muscleSets(episode: Pick<Episode, "blocks">): MuscleSets[] {
  const direct = new Map<Muscle, number>();
  const indirect = new Map<Muscle, number>();
  const add = (to: Map<Muscle, number>, muscle: Muscle, sets: number): void => void to.set(muscle, (to.get(muscle) ?? 0) + sets);
  for (const block of episode.blocks) {
    const exercise = block.exercise === null ? undefined : exerciseById(block.exercise);
    const sets = plannedSets(block).filter((set) => set.role === "working").length;
    if (!exercise || sets === 0) continue;
    for (const muscle of exercise.direct) add(direct, muscle, sets);
    for (const muscle of exercise.indirect) add(indirect, muscle, sets);
  }
  return [...new Set([...direct.keys(), ...indirect.keys()])]
    .map((muscle) => {
      const own = direct.get(muscle) ?? 0;
      const helping = indirect.get(muscle) ?? 0;
      return { muscle, direct: own, indirect: helping, counted: countSets(own, helping) };
    })
    .sort((a, b) => b.counted - a.counted || b.direct - a.direct || a.muscle.localeCompare(b.muscle));
}
