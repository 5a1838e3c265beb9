import type { Block, BlockFilming, Episode, Line, LineKind } from "./schema";

/** The block with this id, or null. */
export function findBlock(episode: Episode, id: string): Block | null {
  return episode.blocks.find((block) => block.id === id) ?? null;
}

const NO_FILMING: BlockFilming = { marks: [], filmed: [] };

/** Where the coach put a block's marks and what became of its shots; empty when neither is known. */
export const blockFilming = (block: Block): BlockFilming => block.filming ?? NO_FILMING;

/** Lines of one kind, in order. */
export function linesOf(block: Block, kind: LineKind): Line[] {
  return block.lines.filter((line) => line.kind === kind);
}

/** The block's place in the running order as people count it, from 1; 0 when it is not there. */
export function blockNumber(episode: Episode, id: string): number {
  return episode.blocks.findIndex((block) => block.id === id) + 1;
}
