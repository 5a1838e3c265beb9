import type { Block, Episode, Line, LineKind } from "./schema";

/** The block with this id, or null. */
export function findBlock(episode: Episode, id: string): Block | null {
  return episode.blocks.find((block) => block.id === id) ?? null;
}

/** Lines of one kind, in order. */
export function linesOf(block: Block, kind: LineKind): Line[] {
  return block.lines.filter((line) => line.kind === kind);
}

/** The block's place in the running order as people count it, from 1; 0 when it is not there. */
export function blockNumber(episode: Episode, id: string): number {
  return episode.blocks.findIndex((block) => block.id === id) + 1;
}
