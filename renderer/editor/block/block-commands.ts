import { $getRoot, $isElementNode, createCommand, type LexicalCommand, type LexicalNode } from "lexical";
import { newId } from "../new-id";
import { $createRow, $heads, $rowsOf, $rowWord, $setText } from "../rows";
import { $blockHead, $createBlockNode, type BlockNode } from "./block-node";
import type { BlockKind } from "../../../shared/episode";

export const INSERT_BLOCK_COMMAND: LexicalCommand<{ kind: BlockKind; title: string; after: string | null }> = createCommand("INSERT_BLOCK_COMMAND");
export const MOVE_BLOCK_COMMAND: LexicalCommand<{ block: string; by: -1 | 1 }> = createCommand("MOVE_BLOCK_COMMAND");
export const DUPLICATE_BLOCK_COMMAND: LexicalCommand<{ block: string }> = createCommand("DUPLICATE_BLOCK_COMMAND");
export const REMOVE_BLOCK_COMMAND: LexicalCommand<{ block: string }> = createCommand("REMOVE_BLOCK_COMMAND");
/** Everything under the caret's line becomes a block of its own. */
export const SPLIT_BLOCK_COMMAND: LexicalCommand<void> = createCommand("SPLIT_BLOCK_COMMAND");
/** The block's rows go to the end of the block above. */
export const JOIN_BLOCK_COMMAND: LexicalCommand<{ block: string }> = createCommand("JOIN_BLOCK_COMMAND");

/** A new, empty head; id and facts are its own. */
export const $newHead = (kind: BlockKind, title = ""): BlockNode => {
  const head = $createBlockNode({ id: newId(), kind, exercise: null, station: "", minutes: null, clipSeconds: null, actuals: [], filming: null });
  $setText(head, title);
  return head;
};

const $nodesOf = (head: BlockNode): LexicalNode[] => [head, ...$rowsOf(head)];
const $lastOf = (head: BlockNode): LexicalNode => $nodesOf(head).at(-1) ?? head;

/** Inserts a block after another, or at the end; the caret goes into its title. */
export function $insertBlock(kind: BlockKind, title: string, after: BlockNode | null): BlockNode {
  const head = $newHead(kind, title);
  const lone = $heads()[0];
  if (after) $lastOf(after).insertAfter(head);
  else if (lone && $heads().length === 1 && $blockHead(lone).id === "") lone.replace(head);
  else $getRoot().append(head);
  head.selectEnd();
  return head;
}

/** Swaps a block with its neighbour above (-1) or below (1). */
export function $moveBlock(head: BlockNode, by: -1 | 1): void {
  const heads = $heads();
  const other = heads[heads.findIndex((h) => h.is(head)) + by];
  if (!other) return;
  const [upper, lower] = by === -1 ? [other, head] : [head, other];
  for (const node of $nodesOf(lower)) upper.insertBefore(node);
}

/** A copy right below, with ids of its own. */
export function $duplicateBlock(head: BlockNode): BlockNode {
  // Its shots get ids of their own, so nothing of it is filmed yet; where the marks stand is worth keeping.
  const { filming, ...facts } = $blockHead(head);
  const copy = $createBlockNode({ ...facts, id: newId(), actuals: [], filming: filming && { ...filming, filmed: [] } });
  $setText(copy, head.getTextContent());
  let last: LexicalNode = $lastOf(head);
  last.insertAfter(copy);
  last = copy;
  for (const row of $rowsOf(head)) {
    const twin = $createRow($rowWord(row), newId());
    $setText(twin, row.getTextContent());
    last.insertAfter(twin);
    last = twin;
  }
  copy.selectEnd();
  return copy;
}

/** Removes a block and its rows; the caret goes to what stood before, or after. */
export function $removeBlock(head: BlockNode): void {
  const nodes = $nodesOf(head);
  const next = nodes.at(-1)?.getNextSibling();
  const neighbour = head.getPreviousSibling() ?? next;
  for (const node of nodes) node.remove();
  if ($isElementNode(neighbour)) neighbour.selectEnd();
}

/** The row and all below it become a new block of the same kind. */
export function $splitBlock(row: LexicalNode, kind: BlockKind): BlockNode {
  const head = $newHead(kind);
  row.insertBefore(head);
  head.select(0, 0);
  return head;
}

/** Takes a head away, so that its rows belong to the block above. The first block has nothing above it and stays. */
export function $joinBlock(head: BlockNode): void {
  const before = head.getPreviousSibling();
  if (!before) return;
  const title = head.getTextContent();
  if (title.trim() !== "") {
    const note = $createRow("note", newId());
    $setText(note, title);
    head.replace(note);
    note.selectEnd();
  } else {
    head.remove();
    if ($isElementNode(before)) before.selectEnd();
  }
}
