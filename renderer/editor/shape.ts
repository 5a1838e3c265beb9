import { $createTextNode, $getRoot, $getState, $hasUpdateTag, $setState, LineBreakNode, RootNode, TabNode, type LexicalEditor, type LexicalNode } from "lexical";
import { mergeRegister } from "@lexical/utils";
import { $createBlockNode, $isBlockNode, BlockNode } from "./block/block-node";
import { $createLineNode } from "./line/line-node";
import { $placeholder, LOAD_TAG } from "./load";
import { newId } from "./new-id";
import { $isSheetNode } from "./rows";
import { idState } from "./states";

/** A node of another kind that found its way in (a browser's own paragraph) becomes a note with its words. */
function $adopt(node: LexicalNode): void {
  const line = $createLineNode(newId(), "note");
  const text = node.getTextContent();
  if (text) line.append($createTextNode(text));
  node.replace(line);
}

/** Every row needs an id of its own: the second holder of an id, and a head that got words, get a new one. */
function $giveIds(): void {
  const taken = new Set<string>();
  for (const node of $getRoot().getChildren()) {
    if (!$isSheetNode(node)) continue;
    const id = $getState(node, idState);
    const isPlaceholder = $isBlockNode(node) && id === "" && node.isEmpty() && !$isSheetNode(node.getNextSibling());
    if (isPlaceholder) continue;
    if (id === "" || taken.has(id)) $setState(node, idState, newId());
    taken.add($getState(node, idState));
  }
}

/**
 * Keeps the sheet a sheet: only heads and rows at the top, a head first, one line of text in each, no id twice.
 * @returns a function that stops
 */
export function registerShape(editor: LexicalEditor): () => void {
  return mergeRegister(
    editor.registerNodeTransform(RootNode, (root) => {
      for (const node of root.getChildren()) if (!$isSheetNode(node)) $adopt(node);
      const first = root.getFirstChild();
      if (first === null) root.append($placeholder());
      else if (!$isBlockNode(first)) first.insertBefore($createBlockNode({ id: newId(), kind: "talk", exercise: null, station: "", minutes: null, clipSeconds: null, actuals: [], filming: null }));
      if (!$hasUpdateTag(LOAD_TAG)) $giveIds();
    }),
    editor.registerNodeTransform(LineBreakNode, (node) => {
      node.replace($createTextNode(" "));
    }),
    editor.registerNodeTransform(TabNode, (node) => {
      node.replace($createTextNode(" "));
    }),
    // Typing into the head of an empty page changes the head, not the root.
    editor.registerNodeTransform(BlockNode, (head) => {
      if ($getState(head, idState) === "" && !head.isEmpty()) $setState(head, idState, newId());
    }),
  );
}
