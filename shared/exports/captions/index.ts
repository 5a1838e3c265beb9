/** Captions from script and timing, as the files players read. */
import { writeSubrip, writeWebvtt, type Cue } from "../../speech";
import type { Exporter } from "../types";
import { captionsOf } from "./build";

export { captionLimitsOf, captionsOf, type CaptionOptions, type EpisodeCaptions, type MeasuredLine } from "./build";
export { spelledForReader } from "./reader-spelling";

const NO_WORDS = "Nothing is said in this episode, so the captions are empty.";

const captions = (id: "captions.vtt" | "captions.srt", title: string, mime: string, source: string, write: (cues: readonly Cue[]) => string): Exporter => ({
  meta: { id, title, extension: id === "captions.vtt" ? "vtt" : "srt", mime, source },
  render: async (episode, { pace, measured }) => {
    const { cues, notes } = captionsOf(episode, { pace, ...(measured ? { measured } : {}) });
    return { bytes: new TextEncoder().encode(write(cues)), notes: cues.length === 0 ? [NO_WORDS] : notes };
  },
});

export const captionsVtt = captions("captions.vtt", "Captions", "text/vtt", "W3C WebVTT", writeWebvtt);
export const captionsSrt = captions("captions.srt", "Captions, SubRip", "application/x-subrip", "common practice, no source", writeSubrip);
