/** The voiceover script: what is said over the pictures, for reading aloud. */
import { linesOf, type Episode } from "../../episode";
import { renderDocx, renderPdf } from "../paper";
import type { Exporter, Rendered } from "../types";
import { voiceoverPaper } from "./tree";

export { voiceoverPaper } from "./tree";

const SOURCE = "common practice, no source";

/** What of the episode the script leaves out, where there is such a thing. */
function dropped(episode: Episode): string[] {
  const notes = episode.blocks.reduce((sum, block) => sum + linesOf(block, "note").length, 0);
  return notes === 0 ? [] : [`${notes === 1 ? "One private note is" : `${notes} private notes are`} left out of the voiceover script.`];
}

const withNotes = (rendered: Rendered, notes: readonly string[]): Rendered => ({ ...rendered, notes: [...notes, ...rendered.notes] });

export const voiceoverPdf: Exporter = {
  meta: { id: "voiceover.pdf", title: "Voiceover script", extension: "pdf", mime: "application/pdf", source: SOURCE },
  render: async (episode, options) => withNotes(await renderPdf(voiceoverPaper(episode, options.pace), options), dropped(episode)),
};

export const voiceoverDocx: Exporter = {
  meta: {
    id: "voiceover.docx", title: "Voiceover script for Word", extension: "docx",
    mime: "application/vnd.openxmlformats-officedocument.wordprocessingml.document", source: SOURCE,
  },
  render: async (episode, options) => withNotes(await renderDocx(voiceoverPaper(episode, options.pace), options), dropped(episode)),
};
