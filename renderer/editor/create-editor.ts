import { registerHistory, createEmptyHistoryState } from "@lexical/history";
import { registerPlainText } from "@lexical/plain-text";
import { mergeRegister } from "@lexical/utils";
import { createEditor, type LexicalEditor } from "lexical";
import { registerClipboard } from "./clipboard";
import { registerKeys } from "./keys";
import { registerNaming } from "./naming";
import { SHEET_NODES } from "./nodes";
import { registerSelected } from "./selected";
import { registerShape } from "./shape";
import { registerTyping } from "./typing";

/** Undo keeps this many steps; each holds a whole state that shares what did not change. */
const UNDO_DEPTH = 400;

export interface UndoState { readonly canUndo: boolean; readonly canRedo: boolean }

/**
 * The one editor of the window: holds the open episode, in all places, until the window closes.
 * @param onUndoState - called whenever undo or redo becomes possible or not
 * @param onError - an error inside an update; the state before it is kept
 */
export function createSheetEditor(onUndoState: (state: UndoState) => void, onError: (error: Error) => void): { editor: LexicalEditor; forget: () => void; stop: () => void } {
  const editor = createEditor({ namespace: "repwright", nodes: [...SHEET_NODES], onError, theme: {} });
  const history = createEmptyHistoryState();
  const tell = (): void => onUndoState({ canUndo: history.undoStack.length > 0, canRedo: history.redoStack.length > 0 });
  const stop = mergeRegister(
    registerPlainText(editor),
    registerHistory(editor, history, 400, () => Date.now(), tell, UNDO_DEPTH),
    registerShape(editor),
    registerTyping(editor),
    registerNaming(editor),
    registerSelected(editor),
    registerKeys(editor),
    registerClipboard(editor),
  );
  const forget = (): void => {
    history.undoStack = [];
    history.redoStack = [];
    // What is on the sheet now is where undo ends.
    history.current = { editor, editorState: editor.getEditorState() };
    tell();
  };
  return { editor, forget, stop };
}
