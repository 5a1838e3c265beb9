import { $createTextNode, $getRoot, $getState, $isElementNode, $setState, type ElementNode, type LexicalNode } from "lexical";
import { LINE_KINDS, type LineKind, type SetRole } from "../../shared/episode";
import { $createAlternateNode, $isAlternateNode, ALTERNATE_WORD, type AlternateNode } from "./alternate/alternate-node";
import { $isBlockNode, type BlockNode } from "./block/block-node";
import { $createLineNode, $isLineNode, type LineNode } from "./line/line-node";
import { $createSetLineNode, $isSetLineNode, type SetLineNode } from "./set-line/set-line-node";
import { idState, lineKindState, setRoleState } from "./states";

/** A row that stands under a block's head. */
export type Row = LineNode | SetLineNode | AlternateNode;

/** Every word a margin may carry, in the order the kinds are offered. */
export type RowWord = "sets" | "ramp-up" | LineKind | typeof ALTERNATE_WORD;
export const ROW_WORDS: readonly RowWord[] = ["sets", "ramp-up", ...LINE_KINDS, ALTERNATE_WORD];

const WORD_ROLES: Readonly<Record<string, SetRole>> = { sets: "working", "ramp-up": "ramp-up" };

export const $isRow = (node: LexicalNode | null | undefined): node is Row => $isLineNode(node) || $isSetLineNode(node) || $isAlternateNode(node);
export const $isSheetNode = (node: LexicalNode | null | undefined): node is Row | BlockNode => $isRow(node) || $isBlockNode(node);

/** Makes an empty row of the kind the word names. */
export function $createRow(word: RowWord, id: string): Row {
  const role = WORD_ROLES[word];
  if (role) return $createSetLineNode(id, role);
  return word === ALTERNATE_WORD ? $createAlternateNode(id) : $createLineNode(id, word as LineKind);
}

/** The margin word of a row. */
export const $rowWord = (row: Row): RowWord => row.word() as RowWord;

/** Replaces a row's text. An empty text leaves no text node, so that the hint shows. */
export function $setText(node: ElementNode, text: string): void {
  if (node.getTextContent() === text) return;
  node.clear();
  if (text !== "") node.append($createTextNode(text));
}

/** Turns a row into another kind; text, id and caret stay. Returns the row that now holds them. */
export function $setRowWord(row: Row, word: RowWord): Row {
  if ($rowWord(row) === word) return row;
  const role = WORD_ROLES[word];
  if ($isSetLineNode(row) && role) {
    $setState(row, setRoleState, role);
    return row;
  }
  if ($isLineNode(row) && !role && word !== ALTERNATE_WORD) {
    $setState(row, lineKindState, word as LineKind);
    return row;
  }
  const other = $createRow(word, $getState(row, idState));
  row.replace(other, true);
  $settleRow(other);
  return other;
}

/** Set lines stand at the top of their block, alternates at its end: moves a row there if it is elsewhere. */
export function $settleRow(row: Row): void {
  const head = $headOf(row);
  if (!head) return;
  if ($isSetLineNode(row)) {
    let after: LexicalNode = head;
    for (const other of $rowsOf(head)) if ($isSetLineNode(other) && !other.is(row)) after = other;
    const stray = $rowsOf(head).findIndex((other) => !$isSetLineNode(other));
    const place = $rowsOf(head).findIndex((other) => other.is(row));
    if (stray !== -1 && stray < place) after.insertAfter(row);
  } else if ($isAlternateNode(row)) {
    const rows = $rowsOf(head);
    const last = rows[rows.length - 1];
    if (last && rows.slice(rows.indexOf(row) + 1).some((other) => !$isAlternateNode(other))) last.insertAfter(row);
  }
}

/** The head of the block a node stands in, or null outside any block. */
export function $headOf(node: LexicalNode): BlockNode | null {
  let current: LexicalNode | null = $topOf(node);
  while (current && !$isBlockNode(current)) current = current.getPreviousSibling();
  return current;
}

/** The row or head a node stands in. */
export function $topOf(node: LexicalNode): LexicalNode | null {
  return node.getParent() === null ? null : node.getTopLevelElement();
}

/** The rows under a head, in order. */
export function $rowsOf(head: BlockNode): Row[] {
  const rows: Row[] = [];
  for (let next = head.getNextSibling(); next && !$isBlockNode(next); next = next.getNextSibling()) if ($isRow(next)) rows.push(next);
  return rows;
}

/** All heads in running order. */
export const $heads = (): BlockNode[] => $getRoot().getChildren().filter($isBlockNode);

/** The row or head with this episode id, or null. */
export function $findById(id: string): Row | BlockNode | null {
  for (const node of $getRoot().getChildren()) if ($isSheetNode(node) && $getState(node, idState) === id) return node;
  return null;
}

/** Puts the caret at the end of a row. */
export function $caretAtEnd(node: LexicalNode): void {
  if ($isElementNode(node)) node.selectEnd();
}
