import { $getNodeByKey, $getState, HISTORY_MERGE_TAG, type LexicalEditor, type NodeKey } from "lexical";
import { findExercise } from "../../shared/exercises";
import { $blockHead, $isBlockNode, $setBlockHead } from "./block/block-node";
import { kindOfTitle } from "./clipboard";
import { LOAD_TAG } from "./load";
import { idState } from "./states";

/**
 * A title that names a part or a known exercise says what the block is. Only typing decides: what a file or a
 * picker set stays until the title is changed to something that names another.
 */
export function registerNaming(editor: LexicalEditor): () => void {
  return editor.registerUpdateListener(({ dirtyElements, editorState, prevEditorState, tags }) => {
    if (tags.has(LOAD_TAG) || tags.has("historic")) return;
    const renamed: { key: NodeKey; before: string }[] = [];
    editorState.read(() => {
      for (const key of dirtyElements.keys()) {
        const head = $getNodeByKey(key);
        if (!$isBlockNode(head) || $getState(head, idState) === "") continue;
        const before = prevEditorState.read(() => {
          const old = $getNodeByKey(key);
          return $isBlockNode(old) ? old.getTextContent() : null;
        });
        if (before !== null && before !== head.getTextContent()) renamed.push({ key, before });
      }
    });
    if (renamed.length === 0) return;
    editor.update(() => {
      for (const { key, before } of renamed) {
        const head = $getNodeByKey(key);
        if (!$isBlockNode(head)) continue;
        const named = kindOfTitle(head.getTextContent());
        const now = $blockHead(head);
        if (named && (named.kind !== now.kind || named.exercise !== now.exercise)) $setBlockHead(head, named);
        else if (!named && now.exercise !== null && findExercise(before)?.id === now.exercise) $setBlockHead(head, { exercise: null });
      }
    }, { tag: HISTORY_MERGE_TAG });
  });
}
