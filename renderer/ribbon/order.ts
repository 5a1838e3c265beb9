import type { BlockKind, Episode } from "../../shared/episode";

const LAST: readonly BlockKind[] = ["cool-down", "closing"];

/**
 * Where a new block of a kind goes: an opening first, a warm-up right after it, the cool-down before the closing,
 * a closing last, everything else after the block the caret is in, or before the cool-down.
 * @returns an index into the running order
 */
export function placeForNew(kind: BlockKind, blocks: Episode["blocks"], here: string | null): number {
  const afterLeading = (kinds: readonly BlockKind[]): number => {
    const other = blocks.findIndex((block) => !kinds.includes(block.kind));
    return other === -1 ? blocks.length : other;
  };
  const beforeTrailing = (kinds: readonly BlockKind[]): number => blocks.findLastIndex((block) => !kinds.includes(block.kind)) + 1;
  switch (kind) {
    case "opening":
      return 0;
    case "warm-up":
      return afterLeading(["opening"]);
    case "closing":
      return blocks.length;
    case "cool-down":
      return beforeTrailing(["closing"]);
    case "exercise":
    case "talk": {
      const at = blocks.findIndex((block) => block.id === here);
      return at === -1 || LAST.includes(blocks[at]?.kind ?? "talk") ? beforeTrailing(LAST) : at + 1;
    }
  }
}

/**
 * The index a `move-block` edit needs to bring the block at `from` to the cut `cut` (0 before the first block).
 * @returns null when the block would stay where it is
 */
export function moveTo(from: number, cut: number): number | null {
  const to = cut > from ? cut - 1 : cut;
  return to === from ? null : to;
}
