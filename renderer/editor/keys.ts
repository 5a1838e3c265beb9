import {
  $getRoot, $getSelection, $isRangeSelection, COMMAND_PRIORITY_HIGH, DELETE_CHARACTER_COMMAND, KEY_DOWN_COMMAND, KEY_ENTER_COMMAND,
  type LexicalEditor, type LexicalNode, type RangeSelection,
} from "lexical";
import { mergeRegister } from "@lexical/utils";
import { parseSetLine } from "../../shared/training";
import {
  $duplicateBlock, $insertBlock, $joinBlock, $moveBlock, $removeBlock, $splitBlock, DUPLICATE_BLOCK_COMMAND, INSERT_BLOCK_COMMAND, JOIN_BLOCK_COMMAND,
  MOVE_BLOCK_COMMAND, REMOVE_BLOCK_COMMAND, SPLIT_BLOCK_COMMAND,
} from "./block/block-commands";
import { $blockHead, $isBlockNode, type BlockNode } from "./block/block-node";
import { newId } from "./new-id";
import { $offsetInRow } from "./selected";
import { $isSetLineNode } from "./set-line/set-line-node";
import { $createRow, $findById, $headOf, $isRow, $rowsOf, $rowWord, $setRowWord, $setText, $topOf, type Row, type RowWord } from "./rows";
import { wordAfter } from "./typing";

const $caret = (): { selection: RangeSelection; top: LexicalNode } | null => {
  const selection = $getSelection();
  const top = $isRangeSelection(selection) ? $topOf(selection.anchor.getNode()) : null;
  return $isRangeSelection(selection) && top ? { selection, top } : null;
};

/** What a coach types first under a head of each kind. */
function $firstWord(head: BlockNode): RowWord {
  const { kind } = $blockHead(head);
  if (kind === "exercise") return $rowsOf(head).some($isSetLineNode) ? "cue" : "sets";
  return kind === "warm-up" || kind === "cool-down" ? "cue" : "say";
}

function $newRowUnder(node: LexicalNode, word: RowWord, text = ""): Row {
  const row = $createRow(word, newId());
  $setText(row, text);
  node.insertAfter(row);
  return row;
}

/** Under a head: a first line. In a line: split it. In an empty line: a new block begins here. */
function $enter(): boolean {
  const here = $caret();
  if (!here) return false;
  if (!here.selection.isCollapsed()) here.selection.removeText();
  const { selection, top } = $caret() ?? here;
  if ($isBlockNode(top)) {
    $newRowUnder(top, $firstWord(top)).select(0, 0);
    return true;
  }
  if (!$isRow(top)) return false;
  const text = top.getTextContent();
  if (text.trim() === "") {
    $splitBlock(top, "exercise");
    top.remove();
    return true;
  }
  const at = $offsetInRow(selection.anchor, top);
  const word = $rowWord(top);
  const isScheme = word !== "sets" && word !== "ramp-up" && /^\d/.test(text) && at === text.length && parseSetLine(text).ok;
  if (isScheme) {
    const settled = $setRowWord(top, "sets");
    $newRowUnder(settled, "cue").select(0, 0);
    return true;
  }
  if (at === 0) {
    const above = $createRow(word, newId());
    top.insertBefore(above);
    return true;
  }
  $setText(top, text.slice(0, at).trimEnd());
  const rest = text.slice(at).trimStart();
  $newRowUnder(top, rest === "" ? wordAfter(word) : word, rest).selectStart();
  return true;
}

/** Backspace at a row's start and Delete at its end join lines, but never swallow a block by accident. */
function $deleteAtEdge(isBackward: boolean): boolean {
  const here = $caret();
  if (!here || !here.selection.isCollapsed()) return false;
  const { selection, top } = here;
  const at = $offsetInRow(selection.anchor, top);
  if (isBackward && at === 0) {
    const before = top.getPreviousSibling();
    if ($isBlockNode(top)) {
      if (top.isEmpty() && before) $joinBlock(top);
      else if (top.isEmpty() && $isBlockNode(top.getNextSibling())) top.remove();
      return true;
    }
    if ($isRow(top) && $isBlockNode(before)) {
      if (top.isEmpty()) {
        top.remove();
        before.selectEnd();
      }
      return true;
    }
  }
  if (!isBackward && at === top.getTextContentSize()) {
    const next = top.getNextSibling();
    if ($isBlockNode(next)) {
      if (next.isEmpty()) $joinBlock(next);
      return true;
    }
    if ($isBlockNode(top) && $isRow(next)) {
      if (next.isEmpty()) next.remove();
      return true;
    }
  }
  return false;
}

/** Moves a line past its neighbour within the block, a head with its whole block. */
function $moveHere(by: -1 | 1): boolean {
  const top = $caret()?.top;
  if ($isBlockNode(top)) {
    $moveBlock(top, by);
    return true;
  }
  if (!$isRow(top)) return false;
  const other = by === -1 ? top.getPreviousSibling() : top.getNextSibling();
  if ($isRow(other) && other.getType() === top.getType()) {
    if (by === -1) other.insertBefore(top);
    else other.insertAfter(top);
  }
  return true;
}

/** To the very start or end of the script. Left to itself, the browser stops beside the words, at the margin. */
function $toEdge(event: KeyboardEvent): boolean {
  if (!(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey || (event.key !== "Home" && event.key !== "End")) return false;
  event.preventDefault();
  if (event.key === "Home") $getRoot().selectStart();
  else $getRoot().selectEnd();
  return true;
}

const $headById = (id: string): BlockNode | null => {
  const node = $findById(id);
  return $isBlockNode(node) ? node : null;
};

/** Keys of the sheet, and the block commands that menus and other places send. */
export function registerKeys(editor: LexicalEditor): () => void {
  const onHead = (act: (head: BlockNode) => void) => ({ block }: { block: string }): boolean => {
    const head = $headById(block);
    if (head) act(head);
    return head !== null;
  };
  return mergeRegister(
    editor.registerCommand(KEY_ENTER_COMMAND, (event) => {
      event?.preventDefault();
      const top = $caret()?.top;
      if (event && (event.ctrlKey || event.metaKey) && top) {
        $insertBlock("exercise", "", $headOf(top));
        return true;
      }
      return $enter();
    }, COMMAND_PRIORITY_HIGH),
    editor.registerCommand(DELETE_CHARACTER_COMMAND, $deleteAtEdge, COMMAND_PRIORITY_HIGH),
    editor.registerCommand(KEY_DOWN_COMMAND, $toEdge, COMMAND_PRIORITY_HIGH),
    editor.registerCommand(KEY_DOWN_COMMAND, (event) => {
      if (!event.altKey || event.ctrlKey || event.metaKey || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return false;
      event.preventDefault();
      return $moveHere(event.key === "ArrowUp" ? -1 : 1);
    }, COMMAND_PRIORITY_HIGH),
    editor.registerCommand(INSERT_BLOCK_COMMAND, ({ kind, title, after }) => {
      $insertBlock(kind, title, after === null ? null : $headById(after));
      return true;
    }, COMMAND_PRIORITY_HIGH),
    editor.registerCommand(MOVE_BLOCK_COMMAND, ({ block, by }) => onHead((head) => $moveBlock(head, by))({ block }), COMMAND_PRIORITY_HIGH),
    editor.registerCommand(DUPLICATE_BLOCK_COMMAND, onHead($duplicateBlock), COMMAND_PRIORITY_HIGH),
    editor.registerCommand(REMOVE_BLOCK_COMMAND, onHead($removeBlock), COMMAND_PRIORITY_HIGH),
    editor.registerCommand(JOIN_BLOCK_COMMAND, onHead($joinBlock), COMMAND_PRIORITY_HIGH),
    editor.registerCommand(SPLIT_BLOCK_COMMAND, () => {
      const top = $caret()?.top;
      const head = top ? $headOf(top) : null;
      if ($isRow(top) && head) $splitBlock(top, $blockHead(head).kind);
      return $isRow(top);
    }, COMMAND_PRIORITY_HIGH),
  );
}
