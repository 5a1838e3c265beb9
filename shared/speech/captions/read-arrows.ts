import { plainText } from "./plain-text";
import type { Problems } from "./problems";
import { readTime, sayTime } from "./times";
import type { CaptionAside, Cue } from "./types";

/** A cue whose end, or both times, are still to be filled from its neighbours. */
export interface OpenCue {
  readonly line: number;
  readonly start: number | null;
  readonly end: number | null;
  readonly text: string;
}

const TIMING = /^\s*(\S+?)\s*--+>\s*(\S+)(?:\s.*)?$/;
/** Right above the times and alone after an empty line: in WebVTT any words, in SubRip a number; words there are said. */
const isIdentifier = (lines: readonly string[], at: number, format: "webvtt" | "subrip"): boolean =>
  (format === "webvtt" ? /\S/ : /^\s*\d+\s*$/).test(lines[at] ?? "") && (at === 0 || (lines[at - 1] ?? "").trim() === "");
const BLOCK = /^(?:NOTE|STYLE|REGION)(?:\s|$)/;

interface Timing {
  readonly start: number | null;
  readonly end: number | null;
}

function readTiming(line: string, at: number, format: "webvtt" | "subrip", problems: Problems): Timing {
  const match = TIMING.exec(line);
  const start = match ? readTime(match[1] ?? "") : null;
  const end = match ? readTime(match[2] ?? "") : null;
  if (!start || !end) {
    problems.add("lines of times could not be read", at + 1, `Line ${at + 1}: the times "${line.trim().slice(0, 60)}" cannot be read; the words below keep their place between their neighbours.`);
    return { start: start?.seconds ?? null, end: end?.seconds ?? null };
  }
  const loose = !start.strict || !end.strict || (format === "webvtt" && line.includes(","));
  if (loose) problems.add("times are written in an unusual way and were still understood", at + 1, `Line ${at + 1}: the times "${line.trim().slice(0, 60)}" are not written as the format asks; they were read as ${sayTime(start.seconds)} to ${sayTime(end.seconds)}.`);
  return { start: start.seconds, end: end.seconds };
}

/**
 * Captions with arrow lines (WebVTT, SubRip): every line with times begins a cue, whatever else is broken around it.
 * Words after an empty line inside a cue stay with it; words before the first times become an aside.
 */
export function readArrows(lines: readonly string[], format: "webvtt" | "subrip", problems: Problems): { cues: OpenCue[]; asides: CaptionAside[] } {
  const cues: OpenCue[] = [];
  const asides: CaptionAside[] = [];
  let timing: (Timing & { readonly line: number }) | null = null;
  let words: string[] = [];
  let wordsAt = 0;
  let gap = false;
  const close = (): void => {
    const text = plainText(words, format);
    if (text !== "" && timing) cues.push({ ...timing, text });
    else if (text !== "") asides.push({ line: wordsAt + 1, kind: "untimed", text });
    words = [];
    gap = false;
  };
  let at = 0;
  if (format === "webvtt") {
    // The head ends at the first empty line; what it says (kind, language) is no speech. Some files forget the empty line.
    at = 1;
    while (at < lines.length && (lines[at] ?? "").trim() !== "" && !(lines[at] ?? "").includes("-->") && !(lines[at + 1] ?? "").includes("-->")) at += 1;
  }
  for (; at < lines.length; at += 1) {
    const line = lines[at] ?? "";
    if (line.includes("-->")) {
      close();
      timing = { ...readTiming(line, at, format, problems), line: at + 1 };
    } else if (line.trim() === "") {
      gap = words.length > 0;
    } else if ((lines[at + 1] ?? "").includes("-->") && isIdentifier(lines, at, format)) {
      continue;
    } else if (format === "webvtt" && BLOCK.test(line) && (at === 0 || (lines[at - 1] ?? "").trim() === "")) {
      const from = at;
      while (at + 1 < lines.length && (lines[at + 1] ?? "").trim() !== "" && !(lines[at + 1] ?? "").includes("-->")) at += 1;
      const comment = lines.slice(from, at + 1).join("\n").replace(/^NOTE\s*/, "").trim();
      if (line.startsWith("NOTE") && comment !== "") asides.push({ line: from + 1, kind: "comment", text: comment });
    } else {
      if (gap) problems.add("captions have an empty line inside; their words were kept together", at + 1, `Line ${at + 1}: words stand after an empty line and below no times; they were kept with the caption above.`);
      if (words.length === 0) wordsAt = at;
      words.push(line);
      gap = false;
    }
  }
  close();
  return { cues, asides };
}

/** Fills missing and impossible times from the neighbours, and says where times clash. */
export function settleTimes(open: readonly OpenCue[], secondsOf: (text: string) => number, problems: Problems): Cue[] {
  const cues: Cue[] = [];
  open.forEach((cue, at) => {
    const before = cues.at(-1);
    const start = cue.start ?? before?.end ?? 0;
    const guessed = (): number => {
      const next = open.slice(at + 1, at + 20).find((later) => later.start !== null && later.start > start)?.start ?? Infinity;
      return Math.min(next, start + secondsOf(cue.text));
    };
    const end = cue.end !== null && cue.end > start ? cue.end : guessed();
    if (cue.start !== null && cue.end !== null && cue.end <= cue.start) {
      problems.add("captions end before they begin; their ends were set from their words", cue.line, `Line ${cue.line}: the caption ends at ${sayTime(cue.end)}, not after it begins at ${sayTime(cue.start)}; its end was set to ${sayTime(end)}.`);
    }
    if (before && start < before.start) {
      problems.add("captions begin before the one above them; the order of the file was kept", cue.line, `Line ${cue.line}: the times go back from ${sayTime(before.start)} to ${sayTime(start)}; the order of the file was kept.`);
    } else if (before && start < before.end - 0.0005) {
      problems.add("captions begin while the one above is still shown", cue.line, `Line ${cue.line}: the caption begins at ${sayTime(start)} while the one above is shown until ${sayTime(before.end)}.`);
    }
    cues.push({ start, end, text: cue.text });
  });
  return cues;
}
