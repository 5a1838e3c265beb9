import { createHeadlessEditor } from "@lexical/headless";
import type { LexicalEditor } from "lexical";
import { bench, describe } from "vitest";
import { $syncEpisode, LOAD_TAG } from "../../renderer/editor/load";
import { SHEET_NODES } from "../../renderer/editor/nodes";
import { $projectEpisode, newMemory, type ProjectionMemory } from "../../renderer/editor/projection";
import { $findById, $setText } from "../../renderer/editor/rows";
import { largeEpisode, middleSayLine, typing } from "./large-episode";

const episode = largeEpisode(60);
const line = middleSayLine(episode);
const typed = typing(line.text);

function sheet(): LexicalEditor {
  const editor = createHeadlessEditor({ nodes: [...SHEET_NODES], onError: (error) => { throw error; } });
  editor.update(() => $syncEpisode(episode), { discrete: true, tag: LOAD_TAG });
  return editor;
}

function type(editor: LexicalEditor): void {
  editor.update(() => {
    const node = $findById(line.id);
    if (node) $setText(node, typed());
  }, { discrete: true });
}

function project(editor: LexicalEditor, memory: ProjectionMemory): ProjectionMemory {
  const projected = editor.read(() => $projectEpisode(memory));
  if (!projected) throw new Error("The sheet holds no episode");
  return projected.memory;
}

/** Read the ratio: both type one keystroke; one projects with the memory of the last projection, the other without. */
describe("a keystroke on a sheet of 60 blocks", () => {
  const [remembering, forgetting] = [sheet(), sheet()];
  let memory = project(remembering, newMemory());

  bench("and the projection of what changed", () => {
    type(remembering);
    memory = project(remembering, memory);
  });
  bench("and the projection of the whole sheet", () => {
    type(forgetting);
    project(forgetting, newMemory());
  });
  bench("alone, not projected", () => type(forgetting));
});
