import { $create, $getState, $setState, ElementNode, type EditorConfig, type LexicalNode } from "lexical";
import { BLOCK_KIND_NAMES, type Block, type BlockFilming } from "../../../shared/episode";
import { RowNode } from "../row/row-node";
import { textPart } from "../row/row-view";
import { actualsState, blockKindState, clipSecondsState, exerciseState, filmingState, idState, minutesState, stationState } from "../states";

/** The part of a block that its head holds; its rows follow as siblings until the next head. Without marks moved or shots filmed `filming` is null. */
export type BlockHead = Pick<Block, "id" | "kind" | "title" | "exercise" | "station" | "minutes" | "clipSeconds" | "actuals"> & { readonly filming: BlockFilming | null };

/** The head of a block. Its text is the block's title. */
export class BlockNode extends RowNode {
  override $config() {
    return this.config("block", {
      extends: ElementNode,
      stateConfigs: [idState, blockKindState, exerciseState, stationState, minutesState, clipSecondsState, actualsState, filmingState].map((stateConfig) => ({ stateConfig, flat: true })),
    });
  }

  /** The margin of a head shows its number in the running order, which the stylesheet counts. */
  override word(): string {
    return "";
  }

  override hint(): string {
    const kind = $getState(this, blockKindState);
    return kind === "exercise" ? "Name an exercise, or another part: Warm-up, Talk, Closing" : BLOCK_KIND_NAMES[kind];
  }

  protected override rowClass(): string {
    return "block-head";
  }

  protected override remarkTag(): "button" {
    return "button";
  }

  override createDOM(config: EditorConfig): HTMLElement {
    const row = super.createDOM(config);
    const text = textPart(row);
    text.setAttribute("role", "heading");
    text.setAttribute("aria-level", "2");
    return row;
  }
}

export const $isBlockNode = (node: LexicalNode | null | undefined): node is BlockNode => node instanceof BlockNode;

/** A head with these facts; its title is appended as text by the caller. */
export function $createBlockNode(head: Omit<BlockHead, "title">): BlockNode {
  return $setBlockHead($create(BlockNode), head);
}

/** Writes the given facts into a head. */
export function $setBlockHead(node: BlockNode, head: Partial<Omit<BlockHead, "title">>): BlockNode {
  if (head.id !== undefined) $setState(node, idState, head.id);
  if (head.kind !== undefined) $setState(node, blockKindState, head.kind);
  if (head.exercise !== undefined) $setState(node, exerciseState, head.exercise);
  if (head.station !== undefined) $setState(node, stationState, head.station);
  if (head.minutes !== undefined) $setState(node, minutesState, head.minutes);
  if (head.clipSeconds !== undefined) $setState(node, clipSecondsState, head.clipSeconds);
  if (head.actuals !== undefined) $setState(node, actualsState, head.actuals);
  if (head.filming !== undefined) $setState(node, filmingState, head.filming);
  return node;
}

/** The facts of a head, without its title. */
export function $blockHead(node: BlockNode): Omit<BlockHead, "title"> {
  return {
    id: $getState(node, idState),
    kind: $getState(node, blockKindState),
    exercise: $getState(node, exerciseState),
    station: $getState(node, stationState),
    minutes: $getState(node, minutesState),
    clipSeconds: $getState(node, clipSecondsState),
    actuals: $getState(node, actualsState),
    filming: $getState(node, filmingState),
  };
}
