import { captionsSrt, captionsVtt } from "./captions";
import { handoutPdf } from "./handout";
import { phoneSheet } from "./phone-sheet";
import { pocketListPdf } from "./pocket-list";
import { shotListDocx, shotListPdf } from "./shot-list";
import type { DocumentId, Exporter } from "./types";
import { cueCardDocx, cueCardPdf, voiceoverDocx, voiceoverPdf, voiceoverTxt } from "./voiceover";

/** Documents: pure functions from an episode to the bytes of a file. */
export * from "./types";
export * from "./publish";
export { captionLimitsOf, captionsOf, spelledForReader, type CaptionOptions, type EpisodeCaptions, type MeasuredLine } from "./captions";
export { fileNameFor } from "./file-name";
export { phoneSession, type PhoneBlock, type PhoneExtra, type PhoneMark, type PhonePage, type PhoneSession, type PhoneSet, type PhoneShot } from "./phone-sheet";
export { weighedWords, type WeighedWord } from "./voiceover/emphasis";
export { captionsSrt, captionsVtt, cueCardDocx, cueCardPdf, handoutPdf, phoneSheet, pocketListPdf, shotListDocx, shotListPdf, voiceoverDocx, voiceoverPdf, voiceoverTxt };

/** Every document there is, in the order a coach needs them. */
export const EXPORTERS: readonly Exporter[] = [
  shotListPdf, shotListDocx, pocketListPdf, voiceoverPdf, voiceoverDocx, voiceoverTxt, cueCardPdf, cueCardDocx, captionsVtt, captionsSrt, handoutPdf, phoneSheet,
];

/** @throws {Error} when no exporter has the id */
export function exporterFor(id: DocumentId): Exporter {
  const found = EXPORTERS.find((exporter) => exporter.meta.id === id);
  if (!found) throw new Error(`exporterFor: there is no document "${id}"`);
  return found;
}
