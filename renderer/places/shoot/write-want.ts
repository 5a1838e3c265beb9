import { emptyBlock, newLine, type Edit, type Episode, type NewId } from "../../../shared/episode";
import type { EpisodeWant } from "../../../shared/filming";

/** What writes a want's shot: at the end of its block, or with the opening or closing that is missing. */
export function writeWant(episode: Episode, want: EpisodeWant, newId: NewId): Edit[] {
  const line = newLine(newId, "shot", want.shot);
  if (want.block !== null) return [{ type: "insert-line", block: want.block, at: null, line }];
  if (want.id.startsWith("opening")) return [{ type: "insert-block", at: 0, block: emptyBlock(newId, "opening", { lines: [line] }) }];
  const last = episode.blocks.at(-1);
  if (last && !want.id.startsWith("closing")) return [{ type: "insert-line", block: last.id, at: null, line }];
  return [{ type: "insert-block", at: null, block: emptyBlock(newId, "closing", { lines: [line] }) }];
}
