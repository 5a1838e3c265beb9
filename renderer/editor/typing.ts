import { $getSelection, $hasUpdateTag, $isRangeSelection, TextNode, type LexicalEditor } from "lexical";
import { LOAD_TAG } from "./load";
import { $isRow, $setRowWord, ROW_WORDS, type RowWord } from "./rows";

/** Words people type for a kind besides its own. */
const SAME_AS: Readonly<Record<string, RowWord>> = {
  set: "sets", scheme: "sets", rampup: "ramp-up", "ramp up": "ramp-up", "warm-up sets": "ramp-up", do: "cue", cues: "cue", dont: "avoid", "don't": "avoid", fault: "avoid",
  warning: "caution", safety: "caution", voice: "say", words: "say", film: "shot", angle: "shot", notes: "note", alternate: "if taken", "if busy": "if taken",
};

/** "avoid: leaning back" names a kind and the words after it; null when the text names none. */
export function readPrefix(text: string): { word: RowWord; rest: string } | null {
  const [, typed, rest] = /^\s*([a-z' -]{2,14}?)\s*:\s*(.*)$/is.exec(text) ?? [];
  if (typed === undefined || rest === undefined) return null;
  const key = typed.toLowerCase();
  const word = ROW_WORDS.find((known) => known === key) ?? SAME_AS[key];
  return word ? { word, rest } : null;
}

/**
 * A kind's word and a colon at the start of a line make it one, as soon as the colon is typed.
 * Words that came from a file stay as they are.
 */
export function registerTyping(editor: LexicalEditor): () => void {
  return editor.registerNodeTransform(TextNode, (node) => {
    if ($hasUpdateTag(LOAD_TAG) || node.getPreviousSibling() !== null) return;
    const row = node.getParent();
    // The space after the colon is typed when the kind has changed already; a line never needs to begin with one.
    if ($isRow(row) && row.getTextContent() === " ") {
      node.remove();
      row.select(0, 0);
      return;
    }
    const prefix = $isRow(row) ? readPrefix(node.getTextContent()) : null;
    if (!prefix || !$isRow(row)) return;
    const selection = $getSelection();
    const caret = $isRangeSelection(selection) && selection.isCollapsed() && selection.anchor.getNode().is(node) ? selection.anchor.offset : null;
    const cut = node.getTextContentSize() - prefix.rest.length;
    // Only at the moment of typing: the caret stands just behind the prefix.
    if (caret === null || caret > cut || caret < cut - 1) return;
    node.setTextContent(prefix.rest);
    const settled = $setRowWord(row, prefix.word);
    if (prefix.rest === "") {
      node.remove();
      settled.select(0, 0);
    } else node.select(0, 0);
  });
}

/** The kind a new line takes after one of this kind. */
export const wordAfter = (word: RowWord): RowWord => (word === "ramp-up" ? "sets" : word === "sets" ? "cue" : word);
