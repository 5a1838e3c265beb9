import { $addUpdateTag, $createTextNode, $getSelection, $getState, $isRangeSelection, $getRoot, COMMAND_PRIORITY_HIGH, COPY_COMMAND, CUT_COMMAND, HISTORY_PUSH_TAG, PASTE_COMMAND, REMOVE_TEXT_COMMAND, type LexicalEditor, type LexicalNode } from "lexical";
import { mergeRegister } from "@lexical/utils";
import { findExercise } from "../../shared/exercises";
import { BLOCK_KIND_NAMES, BLOCK_KINDS, newLine, type BlockKind } from "../../shared/episode";
import { importNotes } from "../../shared/imports";
import { parseSetLine } from "../../shared/training";
import { $newHead } from "./block/block-commands";
import { $isBlockNode, $setBlockHead, type BlockNode } from "./block/block-node";
import { $syncEpisode, LOAD_TAG } from "./load";
import { newId } from "./new-id";
import { $createRow, $headOf, $isRow, $isSheetNode, $rowWord, $setText, $settleRow, $topOf, type RowWord } from "./rows";
import { headState } from "./states";
import { readPrefix } from "./typing";

/** Longest piece one line takes; longer paste is cut at a sentence's end, nothing is dropped. */
const LONGEST_PIECE = 1500;

 
const UNPRINTABLE = /[\u0000-\u001f\u007f\u2028\u2029]/g;

export type PastedPiece = { type: "block"; kind: BlockKind; title: string; exercise: string | null } | { type: "row"; word: RowWord | null; text: string };

const KIND_BY_NAME = new Map<string, BlockKind>(BLOCK_KINDS.flatMap((kind) => [[kind, kind], [BLOCK_KIND_NAMES[kind].toLowerCase(), kind]]));
KIND_BY_NAME.delete("exercise");
KIND_BY_NAME.set("warmup", "warm-up").set("warm up", "warm-up").set("cooldown", "cool-down").set("cool down", "cool-down").set("intro", "opening").set("outro", "closing");

/** Which part of the episode a title names: its kind and, for an exercise, its catalogue id. Null when it names none. */
export function kindOfTitle(title: string): { kind: BlockKind; exercise: string | null } | null {
  const kind = KIND_BY_NAME.get(title.trim().toLowerCase());
  if (kind) return { kind, exercise: null };
  const exercise = findExercise(title);
  if (!exercise) return null;
  if (exercise.family === "mobility-warmup") return { kind: "warm-up", exercise: exercise.id };
  return { kind: exercise.family === "cooldown-stretch" ? "cool-down" : "exercise", exercise: exercise.id };
}

function pieces(text: string): string[] {
  if (text.length <= LONGEST_PIECE) return [text];
  const stop = text.lastIndexOf(". ", LONGEST_PIECE);
  const at = stop > 0 ? stop + 1 : LONGEST_PIECE;
  return [text.slice(0, at).trim(), ...pieces(text.slice(at).trim())];
}

/**
 * Reads pasted notes line by line: "cue: ..." keeps its kind, the name of a part or of a known exercise starts a block,
 * a readable set line is one, everything else is a row of whatever kind it lands in. Bullets and numbers in front are left out.
 */
export function readNotes(text: string): PastedPiece[] {
  return text.split(/\r\n|[\n\r\u2028\u2029]/).flatMap((raw): PastedPiece[] => {
    const bare = raw.replace(UNPRINTABLE, " ").replace(/^\s*(?:[-*•–]|#+|\d{1,2}[.)])\s+/, "").trim();
    if (bare === "") return [];
    const prefix = readPrefix(bare);
    if (prefix) return pieces(prefix.rest).map((piece) => ({ type: "row", word: prefix.word, text: piece }));
    const named = kindOfTitle(bare.replace(/:$/, ""));
    if (named) return [{ type: "block", title: bare.replace(/:$/, ""), ...named }];
    const isSetLine = /^(?:\d|[A-Z]\d?[.):])/.test(bare) && parseSetLine(bare).ok;
    return pieces(bare).map((piece) => ({ type: "row", word: isSetLine ? "sets" : null, text: piece }));
  });
}

/** The rows between two ends of a selection, in order. */
function $selectedTops(): LexicalNode[] {
  const selection = $getSelection();
  if (!$isRangeSelection(selection)) return [];
  const [from, to] = selection.isBackward() ? [selection.focus, selection.anchor] : [selection.anchor, selection.focus];
  const first = $topOf(from.getNode());
  const last = $topOf(to.getNode());
  const all = $getRoot().getChildren();
  const start = all.findIndex((node) => node.is(first));
  const end = all.findIndex((node) => node.is(last));
  return start === -1 ? [] : all.slice(start, end + 1);
}

/** Selected rows as text that pastes back as what it was; a selection inside one row is just its words. */
export function $copiedText(): string {
  const selection = $getSelection();
  const tops = $selectedTops().filter($isSheetNode);
  if (!$isRangeSelection(selection) || tops.length < 2) return selection?.getTextContent() ?? "";
  return tops.map((top) => ($isRow(top) ? `${$rowWord(top)}: ${top.getTextContent()}` : `\n${top.getTextContent()}`)).join("\n").trim();
}

/** No block has been typed yet. */
const $isEmptySheet = (): boolean => $getRoot().getTextContent().trim() === "" && $getRoot().getChildrenSize() <= 1;

/**
 * Notes on an empty sheet become what the import makes of them. A title, and what else is decided already, stays.
 * @returns false where the text is no notes, or more than an episode holds
 */
function $startFromNotes(text: string): boolean {
  const head = $getState($getRoot(), headState);
  const notes = head && $isEmptySheet() ? importNotes(text, newId) : null;
  if (!head || !notes || notes.episode.blocks.length === 0 || notes.notUnderstood.some(({ reason }) => reason === "too much")) return false;
  const { title, session, blocks } = notes.episode;
  // Where the sheet has a title already, what stands over the notes is kept below the first block's.
  const isKept = title !== "" && head.title !== "";
  const first = blocks.slice(0, 1).map((block) => (isKept ? { ...block, lines: [newLine(newId, "note", title), ...block.lines] } : block));
  // Notes without a weight say nothing about units.
  const isWeighed = blocks.some(({ sets }) => sets.some((set) => /kg|kilo|lb|pound|#/i.test(set.text)));
  $syncEpisode({ ...head, title: head.title || title, session: isWeighed ? { ...head.session, units: session.units } : head.session, blocks: [...first, ...blocks.slice(1)] });
  const last = $getRoot().getLastChild();
  if ($isSheetNode(last)) last.selectEnd();
  // Words that were read are not words that are typed; one undo takes them all away.
  $addUpdateTag(LOAD_TAG);
  $addUpdateTag(HISTORY_PUSH_TAG);
  return true;
}

/** The kind of a pasted line that names none: that of the row above, where a list of such goes on. */
function $wordBelow(last: LexicalNode, isPasted: boolean): RowWord {
  const word = $isRow(last) ? $rowWord(last) : null;
  // Of pasted rows "shot: ..." tells of itself alone; what follows is about the block again.
  if (word === "shot" && isPasted) return "note";
  if (word !== null && word !== "sets" && word !== "ramp-up") return word;
  return $headOf(last)?.getTextContent() ? "say" : "note";
}

/** Puts pasted pieces behind the caret's row; a single line pasted into a row that has words joins them. */
export function $paste(text: string): void {
  const selection = $getSelection();
  if (!$isRangeSelection(selection)) return;
  if ($startFromNotes(text)) return;
  const found = readNotes(text);
  if (found.length === 0) return;
  if (!selection.isCollapsed()) selection.removeText();
  const opener = $topOf(selection.anchor.getNode());
  if (!opener) return;
  // A phrase pasted among words is only words.
  if (found.length === 1 && opener.getTextContent() !== "") {
    selection.insertText(text.replace(UNPRINTABLE, " ").trimEnd());
    return;
  }
  let last: LexicalNode = opener;
  for (const piece of found) {
    const blank: boolean = last.is(opener) && $isSheetNode(opener) && opener.isEmpty() && opener.isAttached();
    if (piece.type === "block") {
      const next: BlockNode = blank && $isBlockNode(opener) ? opener : $newHead(piece.kind);
      $setBlockHead(next, { kind: piece.kind, exercise: piece.exercise });
      $setText(next, piece.title);
      if (!next.is(last)) last.insertAfter(next);
      if (blank && $isRow(opener)) opener.remove();
      last = next;
      continue;
    }
    const word = piece.word ?? $wordBelow(last, !last.is(opener));
    const row = $createRow(word, newId());
    row.append($createTextNode(piece.text));
    last.insertAfter(row);
    if (blank && $isRow(opener)) opener.remove();
    $settleRow(row);
    last = row;
  }
  last.selectEnd();
}

/** Copy, cut and paste speak plain text both ways. */
export function registerClipboard(editor: LexicalEditor): () => void {
  const copy = (event: ClipboardEvent | KeyboardEvent | null): boolean => {
    const text = $copiedText();
    if (!(event instanceof ClipboardEvent) || !event.clipboardData || text === "") return false;
    event.preventDefault();
    event.clipboardData.setData("text/plain", text);
    return true;
  };
  return mergeRegister(
    editor.registerCommand(COPY_COMMAND, copy, COMMAND_PRIORITY_HIGH),
    editor.registerCommand(CUT_COMMAND, (event) => {
      const selection = $getSelection();
      if (!copy(event) || !$isRangeSelection(selection)) return false;
      editor.dispatchCommand(REMOVE_TEXT_COMMAND, null);
      return true;
    }, COMMAND_PRIORITY_HIGH),
    editor.registerCommand(PASTE_COMMAND, (event) => {
      const text = event instanceof ClipboardEvent ? event.clipboardData?.getData("text/plain") : undefined;
      if (!text || !(event instanceof ClipboardEvent)) return false;
      event.preventDefault();
      $paste(text);
      return true;
    }, COMMAND_PRIORITY_HIGH),
  );
}
