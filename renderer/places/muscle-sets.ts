import type { Episode } from "../../shared/episode";
import { exerciseById, type Muscle } from "../../shared/exercises";
import { plannedSets } from "../../shared/training";

/** Working sets an episode gives one muscle. */
export interface MuscleSets {
  readonly muscle: Muscle;
  readonly direct: number;
  readonly indirect: number;
  /** Direct sets in full, indirect ones by half. */
  readonly counted: number;
}

/** What an indirect set counts. */
const INDIRECT_SHARE = 0.5;

/**
 * Working sets per muscle, most first, then in the order of the alphabet. Blocks whose exercise the catalogue does not know count nothing.
 * @source Pelland et al., The Resistance Training Dose-Response, preprint 2024: of three ways to count, "fractional" (indirect sets by half) fitted best
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
      return { muscle, direct: own, indirect: helping, counted: own + INDIRECT_SHARE * helping };
    })
    .sort((a, b) => b.counted - a.counted || b.direct - a.direct || a.muscle.localeCompare(b.muscle));
}
