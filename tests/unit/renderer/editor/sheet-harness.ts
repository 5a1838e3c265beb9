import { createHeadlessEditor } from "@lexical/headless";
import { $getRoot, type LexicalEditor } from "lexical";
import { registerKeys } from "../../../../renderer/editor/keys";
import { $syncEpisode, LOAD_TAG } from "../../../../renderer/editor/load";
import { registerNaming } from "../../../../renderer/editor/naming";
import { SHEET_NODES } from "../../../../renderer/editor/nodes";
import { $projectEpisode, newMemory } from "../../../../renderer/editor/projection";
import { $isRow, $rowWord } from "../../../../renderer/editor/rows";
import { registerSelected } from "../../../../renderer/editor/selected";
import { registerShape } from "../../../../renderer/editor/shape";
import { registerTyping } from "../../../../renderer/editor/typing";
import { emptyEpisode, type Episode } from "../../../../shared/episode";

/** A sheet without a page: the same nodes, shape, typing and keys as in the window. */
export function sheetWith(episode: Episode = emptyEpisode(() => "e")): LexicalEditor {
  const editor = createHeadlessEditor({ nodes: [...SHEET_NODES], onError: (error) => { throw error; } });
  registerShape(editor);
  registerTyping(editor);
  registerNaming(editor);
  registerSelected(editor);
  registerKeys(editor);
  editor.update(() => $syncEpisode(episode), { discrete: true, tag: LOAD_TAG });
  return editor;
}

/** The sheet as lines: "# Title" for heads, "word: text" for rows. */
export const lines = (editor: LexicalEditor): string[] =>
  editor.read(() => $getRoot().getChildren().map((node) => `${$isRow(node) ? `${$rowWord(node)}:` : "#"} ${node.getTextContent()}`.trimEnd()));

export const episodeOf = (editor: LexicalEditor): Episode => {
  const projected = editor.read(() => $projectEpisode(newMemory()));
  if (!projected) throw new Error("nothing projected");
  return projected.episode;
};

export const act = (editor: LexicalEditor, change: () => void): void => editor.update(change, { discrete: true });
