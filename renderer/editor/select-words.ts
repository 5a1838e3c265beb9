import { $getNodeByKey, $isElementNode, $isTextNode, type LexicalEditor, type NodeKey } from "lexical";

/** Selects characters of a row, or puts the caret at its end when no range is given. */
export function selectWords(editor: LexicalEditor, key: NodeKey, range: { start: number; end: number } | null): void {
  editor.update(() => {
    const row = $getNodeByKey(key);
    if (!$isElementNode(row)) return;
    const text = row.getFirstChild();
    if (range && $isTextNode(text)) {
      const size = text.getTextContentSize();
      text.select(Math.min(range.start, size), Math.min(range.end, size));
    } else row.selectEnd();
  });
}
