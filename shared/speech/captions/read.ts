import { Problems } from "./problems";
import { readArrows, settleTimes } from "./read-arrows";
import { readLines, readTimedLine } from "./read-lines";
import type { CaptionsRead } from "./types";

/** Share of characters no text holds from which a file counts as binary; a few broken ones make none, however short it is. */
const TOO_MANY_ODD = 0.02;
const FEW_ODD = 3;
/** How much of a file is looked at to tell what it is; characters and lines. */
const SAMPLE = 20_000;
const SAMPLE_LINES = 200;

/** Talk at 160 words a minute, six characters a word with its space. Only where a file does not say when words end. */
const CHARACTERS_A_SECOND = 16;
const secondsOf = (text: string): number => Math.max(1, text.length / CHARACTERS_A_SECOND);

const nothing = (sentence: string): CaptionsRead => ({ format: "none", cues: [], problems: [{ line: 1, sentence }], asides: [] });

const isBinary = (text: string): boolean => {
  const sample = text.slice(0, SAMPLE);
  return (sample.match(/[\u0000-\u0008\u000e-\u001f\ufffd]/g)?.length ?? 0) > Math.max(FEW_ODD, sample.length * TOO_MANY_ODD);
};

/**
 * Reads captions: WebVTT, SubRip, or plain lines that begin with a time. Never throws.
 *
 * Cues keep the order of the file. Tags, settings and styles are left out; comments and words without a time come back as asides.
 * Times that are missing or end before they begin are filled from the neighbours, else from how long the words take; each is told.
 * A file without any time gives no cues, and its words are not read here: `format` is "none".
 * @param text - decoded (see `decodeText`); CRLF, LF, CR and a mark at the start are all fine
 */
export function readCaptions(text: string): CaptionsRead {
  const clean = text.replace(/^\ufeff+/, "");
  if (clean.trim() === "") return nothing("The file is empty.");
  if (isBinary(clean)) return nothing("The file is not text, so it holds no captions that can be read.");
  const lines = clean.split(/\r\n|\n|\r/);
  const problems = new Problems();
  const isWebvtt = /^WEBVTT(?:[ \t]|$)/.test(lines[0] ?? "");
  if (isWebvtt || lines.some((line) => line.includes("-->") && /\d\s*-->|-->\s*\d/.test(line))) {
    const format = isWebvtt ? "webvtt" : "subrip";
    const { cues, asides } = readArrows(lines, format, problems);
    if (cues.length === 0) problems.add("files hold no captions", 1, "The file holds no captions.");
    return { format, cues: settleTimes(cues, secondsOf, problems), problems: problems.list(), asides };
  }
  if (!lines.slice(0, SAMPLE_LINES).some((line) => readTimedLine(line) !== null)) return nothing("The file holds no times, so it is no captions.");
  const { cues, asides } = readLines(lines, secondsOf);
  return { format: "timed lines", cues: settleTimes(cues, secondsOf, problems), problems: problems.list(), asides };
}
