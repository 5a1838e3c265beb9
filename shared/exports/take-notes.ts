import type { Episode } from "../episode";
import { spokenLines, type MeasuredSeconds, type Pace } from "../speech";

/** "2 of 5 lines are timed by their takes, the others at the pace."; empty where there is no take. */
export function takeNotes(episode: Episode, pace: Pace, measured: MeasuredSeconds | undefined): string[] {
  const lines = episode.blocks.flatMap((block) => spokenLines(block, 0, pace));
  const timed = lines.filter(({ line }) => measured?.has(line.id)).length;
  if (timed === 0) return [];
  const others = lines.length - timed;
  if (others === 0) return [timed === 1 ? "The one line is timed by its take." : `All ${timed} lines are timed by their takes.`];
  return [`${timed} of ${lines.length} lines ${timed === 1 ? "is timed by its take" : "are timed by their takes"}, the ${others === 1 ? "other" : "others"} at the pace.`];
}
