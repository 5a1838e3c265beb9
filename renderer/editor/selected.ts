import {
  $createRangeSelection, $getRoot, $getSelection, $isElementNode, $isRangeSelection, $setSelection, COMMAND_PRIORITY_CRITICAL, CONTROLLED_TEXT_INSERTION_COMMAND, CUT_COMMAND,
  DELETE_CHARACTER_COMMAND, DELETE_LINE_COMMAND, DELETE_WORD_COMMAND, KEY_ENTER_COMMAND, PASTE_COMMAND, REMOVE_TEXT_COMMAND,
  type LexicalEditor, type LexicalNode, type PointType,
} from "lexical";
import { mergeRegister } from "@lexical/utils";
import { $placeholder } from "./load";
import { $topOf } from "./rows";

/** Characters of the row before a point in it. */
export function $offsetInRow(point: PointType, top: LexicalNode): number {
  const node = point.getNode();
  if (point.type === "element") return node.is(top) ? (point.offset === 0 ? 0 : top.getTextContentSize()) : 0;
  let before = point.offset;
  for (let sibling = node.getPreviousSibling(); sibling; sibling = sibling.getPreviousSibling()) before += sibling.getTextContentSize();
  return before;
}

/** The first and last row of a selection, and its two ends in the order they stand. Null for a mere caret. */
function $span(): { first: LexicalNode; last: LexicalNode; start: PointType; end: PointType } | null {
  const selection = $getSelection();
  if (!$isRangeSelection(selection) || selection.isCollapsed()) return null;
  const [start, end] = selection.isBackward() ? [selection.focus, selection.anchor] : [selection.anchor, selection.focus];
  const root = $getRoot();
  const first = start.getNode().is(root) ? root.getChildAtIndex(start.offset) : $topOf(start.getNode());
  const last = end.getNode().is(root) ? root.getChildAtIndex(end.offset - 1) : $topOf(end.getNode());
  return first && last ? { first, last, start, end } : null;
}

/** Three clicks select up to the start of the next row; that row stays out of what is typed over or deleted. */
function $drawIn(): void {
  const span = $span();
  if (!span || span.first.is(span.last) || span.end.getNode().is($getRoot()) || $offsetInRow(span.end, span.last) > 0) return;
  const before = span.last.getPreviousSibling();
  if (!$isElementNode(before)) return;
  const { key, offset, type } = span.start;
  const stop = before.selectEnd().anchor;
  const drawn = $createRangeSelection();
  drawn.anchor.set(key, offset, type);
  drawn.focus.set(stop.key, stop.offset, stop.type);
  $setSelection(drawn);
}

/** Everything selected and deleted leaves the empty page, not an empty line under an empty block. */
function $clearAll(): boolean {
  const span = $span();
  const root = $getRoot();
  if (!span || !span.first.is(root.getFirstChild()) || !span.last.is(root.getLastChild())) return false;
  // In an only row, its words may be selected without the row being meant.
  if (span.first.is(span.last) && !span.start.getNode().is(root)) return false;
  const fromStart = span.start.getNode().is(root) || $offsetInRow(span.start, span.first) === 0;
  const toEnd = span.end.getNode().is(root) || $offsetInRow(span.end, span.last) === span.last.getTextContentSize();
  if (!fromStart || !toEnd) return false;
  const blank = $placeholder();
  root.clear();
  root.append(blank);
  blank.select(0, 0);
  return true;
}

/** What happens to a selection over several rows before it is deleted or typed over. Runs ahead of all other handlers. */
export function registerSelected(editor: LexicalEditor): () => void {
  const drawIn = (): false => {
    $drawIn();
    return false;
  };
  const remove = (): boolean => {
    $drawIn();
    return $clearAll();
  };
  return mergeRegister(
    editor.registerCommand(CONTROLLED_TEXT_INSERTION_COMMAND, drawIn, COMMAND_PRIORITY_CRITICAL),
    editor.registerCommand(CUT_COMMAND, drawIn, COMMAND_PRIORITY_CRITICAL),
    editor.registerCommand(PASTE_COMMAND, drawIn, COMMAND_PRIORITY_CRITICAL),
    editor.registerCommand(KEY_ENTER_COMMAND, drawIn, COMMAND_PRIORITY_CRITICAL),
    editor.registerCommand(REMOVE_TEXT_COMMAND, remove, COMMAND_PRIORITY_CRITICAL),
    editor.registerCommand(DELETE_CHARACTER_COMMAND, remove, COMMAND_PRIORITY_CRITICAL),
    editor.registerCommand(DELETE_WORD_COMMAND, remove, COMMAND_PRIORITY_CRITICAL),
    editor.registerCommand(DELETE_LINE_COMMAND, remove, COMMAND_PRIORITY_CRITICAL),
  );
}
