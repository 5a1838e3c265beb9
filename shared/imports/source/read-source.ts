import { readCaptions, speak, type CaptionProblem } from "../../speech";
import type { Imported, NotUnderstood, Refused, Word } from "../types";
import { isNotes } from "./notes-or-speech";
import { unroll } from "./rolling";
import { wordsOfCues, wordsOfText } from "./words";

/** Captions of a day fit in here; more is no episode. Bytes of the file, and words in it. */
export const MAX_IMPORT_BYTES = 4 * 1024 * 1024;
export const MAX_IMPORT_WORDS = 60_000;

export interface Source {
  readonly ok: true;
  readonly format: Imported["format"];
  readonly words: readonly Word[];
  readonly asides: readonly NotUnderstood[];
  readonly problems: readonly CaptionProblem[];
}

const refuse = (code: Refused["code"], message: string): Refused => ({ ok: false, code, message });

/** The sentence for a file that is too big to be the words of one episode. @param bytes - its size */
export const tooBig = (bytes: number): Refused =>
  refuse("too-big", `The file is ${(bytes / 1024 / 1024).toFixed(1)} MB; the captions of an hour take about 0.1 MB, and at most ${MAX_IMPORT_BYTES / 1024 / 1024} MB are read. Is it the video itself, or another file?`);

/** Control characters and characters that could not be decoded, as a share of what text may hold. */
const isBinary = (text: string): boolean => (text.slice(0, 20_000).match(/[\u0000-\u0008\u000e-\u001a\u001c-\u001f\ufffd]/g)?.length ?? 0) > Math.min(text.length, 20_000) * 0.02;

/** Words for a line of the draft: control characters would break its file, so they count as blank. */
const printable = (text: string): string => text.replace(/^\ufeff+/, "").replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/g, " ").replace(/[\u2028\u2029]/g, "\n");

/** What kind of text this is, and its words with their times. */
export function readSource(raw: string): Source | Refused {
  if (raw.length > MAX_IMPORT_BYTES) return tooBig(raw.length);
  if (isBinary(raw)) return refuse("not-text", "The file is not text: it may be a video, a picture or a word-processor file. Save the words as plain text, or as captions (.vtt or .srt).");
  const text = printable(raw);
  if (text.trim() === "") return refuse("empty", "There is nothing in it: the file is empty.");
  const read = readCaptions(text);
  if (read.format !== "none" && read.cues.length > 0) {
    const { cues, repeats } = unroll(read.cues);
    const asides = read.asides.map(({ kind, text: words }): NotUnderstood => ({
      text: words, reason: "comment", at: null, block: null,
      sentence: kind === "comment" ? "A comment in the file, not spoken." : "These words stand at no time in the file.",
    }));
    const rolling = { line: 1, sentence: `The captions roll: ${repeats} lines are shown twice, and each was read once.` };
    const problems = repeats > 0 ? [rolling, ...read.problems.filter(({ sentence }) => !/still shown|while the one above/.test(sentence))] : read.problems;
    return settle(read.format, wordsOfCues(cues, (words) => speak(words).seconds), asides, problems);
  }
  if (read.format !== "none") return refuse("empty", "The file has the form of captions, but there are no words in it.");
  return settle(isNotes(text) ? "notes" : "speech", wordsOfText(text), [], []);
}

function settle(format: Source["format"], words: readonly Word[], asides: readonly NotUnderstood[], problems: readonly CaptionProblem[]): Source | Refused {
  if (words.length > MAX_IMPORT_WORDS) return refuse("too-long", `There are ${words.length.toLocaleString("en")} words in it; at most ${MAX_IMPORT_WORDS.toLocaleString("en")} are read at once, more than six hours of speech. Cut it into episodes first.`);
  if (!words.some(({ plain }) => plain !== "")) return refuse("empty", "There are no words in it.");
  return { ok: true, format, words, asides, problems };
}
