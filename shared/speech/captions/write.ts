import { writeTime } from "./times";
import type { Cue } from "./types";

/** Lines of a caption as a file may hold them: control characters and empty lines would end it. */
const linesOf = (text: string): string[] =>
  text.split("\n").map((line) => line.replace(/[\u0000-\u001f\u007f\u2028\u2029]+/g, " ").trim()).filter((line) => line !== "");

/** A cue must not end before it begins, not even after rounding. */
const timing = ({ start, end }: Cue, mark: "." | ","): string => `${writeTime(start, mark)} --> ${writeTime(Math.max(end, start + 0.001), mark)}`;

const file = (parts: readonly string[]): string => parts.map((part) => `${part}\n`).join("\n");

/**
 * Captions as a WebVTT file in UTF-8 with line feeds; signs that would be tags are escaped. Cues are numbered; those without words are left out.
 * @param cues - in order of their start
 * @source W3C WebVTT: The Web Video Text Tracks Format, "Syntax"
 */
export function writeWebvtt(cues: readonly Cue[]): string {
  const escaped = (line: string): string => line.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
  const shown = cues.filter(({ text }) => linesOf(text).length > 0);
  return file(["WEBVTT", ...shown.map((cue, at) => [String(at + 1), timing(cue, "."), ...linesOf(cue.text).map(escaped)].join("\n"))]);
}

/**
 * Captions as a SubRip file in UTF-8 with line feeds. The format has no escapes: an arrow in the words is written as a sign of its own.
 * @param cues - in order of their start
 */
export function writeSubrip(cues: readonly Cue[]): string {
  const shown = cues.filter(({ text }) => linesOf(text).length > 0);
  return file(shown.map((cue, at) => [String(at + 1), timing(cue, ","), ...linesOf(cue.text).map((line) => line.replace(/-{2,}>/g, "→"))].join("\n")));
}
