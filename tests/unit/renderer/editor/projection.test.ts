import { createHeadlessEditor } from "@lexical/headless";
import fc from "fast-check";
import { $getRoot, type LexicalEditor } from "lexical";
import { describe, expect, it } from "vitest";
import { $syncEpisode, LOAD_TAG } from "../../../../renderer/editor/load";
import { SHEET_NODES } from "../../../../renderer/editor/nodes";
import { $projectEpisode, newMemory } from "../../../../renderer/editor/projection";
import { $findById, $setText } from "../../../../renderer/editor/rows";
import { applyEdits, demoEpisode, emptyEpisode, readEpisode, writeEpisode, type Episode } from "../../../../shared/episode";
import { anyEpisode } from "../../episode/arbitrary";

const editorWith = (episode: Episode): LexicalEditor => {
  const editor = createHeadlessEditor({ nodes: [...SHEET_NODES], onError: (error) => { throw error; } });
  editor.update(() => $syncEpisode(episode), { discrete: true, tag: LOAD_TAG });
  return editor;
};
const project = (editor: LexicalEditor, memory = newMemory()) => editor.read(() => $projectEpisode(memory));

describe("projection", () => {
  it("gives back any valid episode after save, load, and a round through the editor state as text", () => {
    fc.assert(
      fc.property(anyEpisode, (episode) => {
        const read = readEpisode(writeEpisode(episode));
        if (!read.ok) throw new Error(read.message);
        expect(read.episode).toEqual(episode);
        const editor = editorWith(read.episode);
        expect(project(editor)?.episode).toEqual(episode);
        const again = createHeadlessEditor({ nodes: [...SHEET_NODES], onError: (error) => { throw error; } });
        again.setEditorState(again.parseEditorState(JSON.stringify(editor.getEditorState().toJSON())));
        expect(project(again)?.episode).toEqual(episode);
      }),
      { numRuns: 150 },
    );
  });

  it("reaches any other valid episode by syncing", () => {
    fc.assert(
      fc.property(anyEpisode, anyEpisode, (one, other) => {
        const editor = editorWith(one);
        const before = project(editor)?.episode ?? null;
        editor.update(() => $syncEpisode(other, before), { discrete: true, tag: LOAD_TAG });
        expect(project(editor)?.episode).toEqual(other);
      }),
      { numRuns: 100 },
    );
  });

  it("hands out the same objects for blocks that did not change", () => {
    const editor = editorWith(demoEpisode);
    const first = project(editor);
    if (!first) throw new Error("nothing projected");
    const line = first.episode.blocks[4]?.lines[0];
    editor.update(() => {
      const node = line && $findById(line.id);
      if (node) $setText(node, "Sit between the heels");
    }, { discrete: true });
    const second = project(editor, first.memory);
    expect(second?.episode.blocks[4]?.lines[0]?.text).toBe("Sit between the heels");
    expect(second?.episode.blocks.map((block, i) => block === first.episode.blocks[i])).toEqual([true, true, true, true, false, true, true, true, true]);
  });

  it("hands out the same episode when nothing changed", () => {
    const editor = editorWith(demoEpisode);
    const first = project(editor);
    if (!first) throw new Error("nothing projected");
    expect(project(editor, first.memory)?.episode).toBe(first.episode);
  });

  it("keeps the nodes of blocks an edit does not touch", () => {
    const editor = editorWith(demoEpisode);
    const before = project(editor)?.episode ?? null;
    if (!before) throw new Error("nothing projected");
    const keys = () => editor.read(() => $getRoot().getChildrenKeys());
    const keysBefore = keys();
    const next = applyEdits(before, [{ type: "move-block", block: before.blocks[8]?.id ?? "", to: 2 }]);
    editor.update(() => $syncEpisode(next, before), { discrete: true, tag: LOAD_TAG });
    expect(new Set(keys())).toEqual(new Set(keysBefore));
    expect(project(editor)?.episode).toEqual(next);
  });

  it("leaves the caret's place on an empty page out of the episode", () => {
    const empty = emptyEpisode(() => "e");
    const editor = editorWith(empty);
    expect(editor.read(() => $getRoot().getChildrenSize())).toBe(1);
    expect(project(editor)?.episode).toEqual(empty);
  });
});
