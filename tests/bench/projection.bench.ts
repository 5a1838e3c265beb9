import { createHeadlessEditor } from "@lexical/headless";
import { bench, describe } from "vitest";
import { $syncEpisode, LOAD_TAG } from "../../renderer/editor/load";
import { SHEET_NODES } from "../../renderer/editor/nodes";
import { $projectEpisode, newMemory } from "../../renderer/editor/projection";
import { $findById, $setText } from "../../renderer/editor/rows";
import { largeEpisode, middleSayLine } from "./large-episode";

const episode = largeEpisode(60);
const line = middleSayLine(episode);

const editor = createHeadlessEditor({ nodes: [...SHEET_NODES], onError: (error) => { throw error; } });
editor.update(() => $syncEpisode(episode), { discrete: true, tag: LOAD_TAG });
const before = editor.read(() => $projectEpisode(newMemory()));
if (!before) throw new Error("The sheet holds no episode");
editor.update(() => {
  const node = $findById(line.id);
  if (node) $setText(node, `${line.text}.`);
}, { discrete: true });

/** Read the ratio: both project the sheet as it is after one keystroke, with and without what was known before it. */
describe("projecting a sheet of 60 blocks", () => {
  bench("after one keystroke", () => void editor.read(() => $projectEpisode(before.memory)));
  bench("in full", () => void editor.read(() => $projectEpisode(newMemory())));
});
