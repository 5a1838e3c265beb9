import type { Episode, Units } from "../episode";
import type { Pace } from "../speech";
import type { MeasuredLine } from "./captions/build";
import type { PhonePage } from "./phone-sheet/types";

export type PaperSize = "a4" | "letter";
export const DOCUMENT_IDS = [
  "shot-list.pdf", "shot-list.docx", "pocket-list.pdf", "voiceover.pdf", "voiceover.docx", "voiceover.txt", "cue-card.pdf", "cue-card.docx", "captions.vtt", "captions.srt", "handout.pdf", "phone-sheet.html",
] as const;
/** A document and its file format; also the end of its file name. */
export type DocumentId = (typeof DOCUMENT_IDS)[number];

/** Font files; the caller reads them, the core only embeds them. TTF bytes. */
export interface FontFiles {
  readonly regular: Uint8Array;
  readonly semibold: Uint8Array;
  readonly bold: Uint8Array;
  readonly italic: Uint8Array;
  /** Stands in, glyph by glyph, for what the text face lacks. */
  readonly fallback: Uint8Array;
}

export interface ExportOptions {
  readonly paper: PaperSize;
  /** Loads are shown in this unit; converted when it is not the session's. */
  readonly units: Units;
  readonly fonts: FontFiles;
  readonly pace: Pace;
  /** How long say lines really took, by line id; captions and the voiceover ask for it. */
  readonly measured?: ReadonlyMap<string, MeasuredLine>;
  /** Script and style of the phone sheet; only that document needs them. The caller reads the files. */
  readonly page?: PhonePage;
  /** ISO date written into the file as its date; same input, same bytes. */
  readonly date: string;
}

export interface Rendered {
  readonly bytes: Uint8Array;
  /** What was left out or substituted, in sentences for the coach. */
  readonly notes: readonly string[];
}

/** One document in one format: a pure function from episode to bytes. */
export interface Exporter {
  readonly meta: {
    readonly id: DocumentId;
    /** "Shot list" */
    readonly title: string;
    readonly extension: "pdf" | "docx" | "txt" | "vtt" | "srt" | "html";
    readonly mime: string;
    readonly source: string;
  };
  readonly render: (episode: Episode, options: ExportOptions) => Promise<Rendered>;
}
