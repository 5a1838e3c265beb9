import { emptyEpisode } from "./create";
import type { NewId } from "./ids";
import type { Block, CarryOver, Episode } from "./schema";

/** What one block hands on: its first working set line and what was really lifted. */
function carried(block: Block): CarryOver[] {
  const sets = block.sets.find((set) => set.role === "working")?.text ?? "";
  if (block.exercise === null || sets === "") return [];
  return [{ exercise: block.exercise, sets, actuals: block.actuals, note: "" }];
}

/**
 * The next episode of a series: an empty page that knows the series, the audience, the gym and what was lifted last time.
 * Days, partners and waivers are not handed on: they are this episode's own.
 */
export function nextEpisode(last: Episode, newId: NewId): Episode {
  const seen = new Set<string>();
  const carryOver = last.blocks.flatMap(carried).filter(({ exercise }) => !seen.has(exercise) && seen.add(exercise));
  return emptyEpisode(newId, {
    series: { ...last.series, number: last.series.number === null ? null : last.series.number + 1 },
    audience: last.audience,
    session: { ...last.session, date: null },
    video: last.video,
    carryOver,
  });
}
