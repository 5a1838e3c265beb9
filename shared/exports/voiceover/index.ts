/** What is said over the pictures: the script to read from, a card to speak from, and the words as plain text. */
import { linesOf, type Episode } from "../../episode";
import { pagesOf, renderDocx, renderPdf, type Paper } from "../paper";
import { takeNotes } from "../take-notes";
import type { ExportOptions, Exporter, Rendered } from "../types";
import { CARD_SIZES, cueCardPaper } from "./cue-card";
import { voiceoverText } from "./plain-text";
import { voiceoverPaper } from "./tree";

export { voiceoverPaper } from "./tree";

const SOURCE = "common practice, no source";
const DOCX_MIME = "application/vnd.openxmlformats-officedocument.wordprocessingml.document";

/** What of the episode the script leaves out, where there is such a thing, and how many lines were timed by takes. */
function notesOf(episode: Episode, { pace, measured }: ExportOptions): string[] {
  const notes = episode.blocks.reduce((sum, block) => sum + linesOf(block, "note").length, 0);
  const dropped = notes === 0 ? [] : [`${notes === 1 ? "One private note is" : `${notes} private notes are`} left out of the voiceover script.`];
  return [...dropped, ...takeNotes(episode, pace, measured)];
}

const withNotes = (rendered: Rendered, notes: readonly string[]): Rendered => ({ ...rendered, notes: [...notes, ...rendered.notes] });

export const voiceoverPdf: Exporter = {
  meta: { id: "voiceover.pdf", title: "Voiceover script", extension: "pdf", mime: "application/pdf", source: SOURCE },
  render: async (episode, options) => withNotes(await renderPdf(voiceoverPaper(episode, options.pace, options.measured), options), notesOf(episode, options)),
};

export const voiceoverDocx: Exporter = {
  meta: { id: "voiceover.docx", title: "Voiceover script for Word", extension: "docx", mime: DOCX_MIME, source: SOURCE },
  render: async (episode, options) => withNotes(await renderDocx(voiceoverPaper(episode, options.pace, options.measured), options), notesOf(episode, options)),
};

export const voiceoverTxt: Exporter = {
  meta: { id: "voiceover.txt", title: "Voiceover script as plain text", extension: "txt", mime: "text/plain", source: SOURCE },
  render: async (episode, options) => ({ bytes: new TextEncoder().encode(voiceoverText(episode, options.pace, options.measured)), notes: notesOf(episode, options) }),
};

/** Points kept free on a Word card: its lines may break elsewhere, and a second page would hold one row. */
const WORD_SPARE = 60;

/** The roomiest card that fits one page, else the tightest. Measured with the PDF's own letters, for Word too. */
async function card(episode: Episode, options: ExportOptions, spare: number): Promise<Paper> {
  for (const size of CARD_SIZES) {
    if (size === CARD_SIZES.at(-1) || (await pagesOf(cueCardPaper(episode, size, options.pace, spare, options.measured), options)) === 1) return cueCardPaper(episode, size, options.pace, 0, options.measured);
  }
  throw new Error("card: there is no size to set it in");
}

export const cueCardPdf: Exporter = {
  meta: { id: "cue-card.pdf", title: "Cue card", extension: "pdf", mime: "application/pdf", source: SOURCE },
  render: async (episode, options) => withNotes(await renderPdf(await card(episode, options, 0), options), takeNotes(episode, options.pace, options.measured)),
};

export const cueCardDocx: Exporter = {
  meta: { id: "cue-card.docx", title: "Cue card for Word", extension: "docx", mime: DOCX_MIME, source: SOURCE },
  render: async (episode, options) => withNotes(await renderDocx(await card(episode, options, WORD_SPARE), options), takeNotes(episode, options.pace, options.measured)),
};
