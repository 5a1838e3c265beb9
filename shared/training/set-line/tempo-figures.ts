import type { Draft } from "./draft";
import type { Reader } from "./reader";
import { LONGEST_PHASE, PHASES, phase } from "./tempo-phases";

/** Figures with the same sign between them, figures parted by spaces, or figures run together. */
const JOINED = /^(?:\d{1,2}|x)(?:(?:\s*-\s*(?:\d{1,2}|x))+|(?:\s*\/\s*(?:\d{1,2}|x))+|(?:[.](?:\d{1,2}|x))+|(?::(?:\d{1,2}|x))+|(?:,(?:\d{1,2}|x))+)(?![a-z0-9½%])/;
const SPACED = /^[\dx](?:\s+[\dx](?![\w.,:/%½]))+(?!\s*(?:kg|lb|kilo|pound|s\b|sec|min|m\b|x|%|rir|rpe|drop))/;
const RUN = /^[\dx]+(?![a-z0-9%½]|[.:]\d)/;

interface Figures {
  readonly parts: readonly string[];
  readonly end: number;
}

function figuresAt(norm: string, start: number): Figures | null {
  const rest = norm.slice(start);
  const separate = JOINED.exec(rest) ?? SPACED.exec(rest);
  if (separate) return { parts: separate[0].match(/\d+|x/g) ?? [], end: start + separate[0].length };
  const run = RUN.exec(rest);
  return run ? { parts: [...run[0]], end: start + run[0].length } : null;
}

/** States the tempo the figures give; `from` is the first token to blame. */
function stateFigures(reader: Reader, draft: Draft, figures: Figures, from: number): void {
  reader.moveTo(figures.end);
  const { parts } = figures;
  if (/^[-/]/.test(reader.norm.slice(figures.end))) reader.refuse("A figure of the tempo is missing after the last dash", from);
  if (parts.length < 3 || parts.length > 4) {
    reader.refuse(`A tempo has four figures (lowering, pause, lifting, pause), or three without the last pause; this has ${parts.length}`, from);
  }
  const wrong = parts.findIndex((part, at) => part === "x" && at !== 2);
  if (wrong >= 0) reader.refuse(`X (as fast as control allows) stands for the lifting only, the third figure; here it stands for ${PHASES[wrong] ?? ""}`, from);
  const [lower = 0, bottom = 0, lift = 0, top = 0] = parts.map((part) => (part === "x" ? 0 : Number(part)));
  if (Math.max(lower, bottom, lift, top) > LONGEST_PHASE) reader.refuse(`A phase of a tempo lasts at most ${LONGEST_PHASE} seconds`, from);
  if (lower + bottom + lift + top === 0 && parts[2] !== "x") reader.refuse("A tempo of nothing but zeros takes no time at all", from);
  draft.state(reader, from, "tempo", [lower, bottom, parts[2] === "x" ? "X" : lift, top]);
}

/** "tempo 3-1-1-0", "3110 tempo", and where nothing else fits "@ 30X1" or four figures after the work. */
export function tempoFigures(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  // "with a tempo of 3110", "at a 3-1-1-0 tempo"
  reader.take("a", "an", "the");
  const named = reader.take("tempo", "cadence") || (reader.peek().text === "t" && /^t:?\s?\d[\dx]{2}/.test(reader.norm.slice(reader.peek().start)) && reader.take("t"));
  if (named) {
    while (reader.take(":", "=", "of", "at", "is", "(")) continue;
    if (phase(reader, draft)) return true;
    const figures = figuresAt(reader.norm, reader.peek().start);
    if (!figures || reader.done) reader.refuse("Tempo figures missing: write four seconds such as 3-1-1-0", from);
    stateFigures(reader, draft, figures, from);
    return true;
  }
  const first = reader.peek();
  if (reader.done || (first.kind !== "number" && first.kind !== "clock" && first.text !== "x")) return false;
  const figures = figuresAt(reader.norm, first.start);
  if (!figures) return false;
  const after = wordFollows(reader.norm, figures);
  if (!after && (reader.at > from || !unnamed(reader, draft, figures))) return false;
  stateFigures(reader, draft, figures, from);
  if (after) reader.take("tempo", "cadence");
  return true;
}

/** Could these figures be a tempo? In "4x6" the X stands where no X of a tempo does. */
const tempoLike = ({ parts }: Figures): boolean => parts.length >= 3 && parts.every((part, at) => part !== "x" || at === 2);

/** "3110 tempo": the word closes these figures and opens no others ("10x3 tempo 3110"). */
function wordFollows(norm: string, figures: Figures): boolean {
  const word = /^\s*(?:tempo|cadence)\b[\s:=]*/.exec(norm.slice(figures.end));
  if (!word || figures.parts.length < 3 || figures.parts.indexOf("x") === 1) return false;
  const next = figuresAt(norm, figures.end + word[0].length);
  return next === null || !tempoLike(next);
}

/** Figures without the word: only where they cannot be a ladder, a load or a second scheme. */
function unnamed(reader: Reader, draft: Draft, { parts, end }: Figures): boolean {
  const typed = reader.text.slice(reader.peek().start, end);
  if (/[\s:,.]/.test(typed) || !/^\s*(?:[,;|)\].]|$|(?:rest|with|w\/|and|rpe|rir|@|for)(?![a-z])|\d)/.test(reader.norm.slice(end))) return false;
  if (/^\d+$/.test(typed)) return typed.length === 4 && draft.complete;
  const dashed = /[-–—−/]/.test(typed);
  const short = parts.every((part) => part === "x" || Number(part) < 10);
  if (dashed) return short && (parts.length === 4 || reader.lead === "@" || reader.lead === "at") && draft.complete && (parts.length === 4 || parts.length === 3);
  // 20X0 and 30X1 are no scheme: nobody does zero reps, or twenty sets
  const run = /^(\d)\dX(\d)$/i.exec(typed);
  return run !== null && draft.complete && (reader.lead === "@" || run[2] === "0" || Number(run[1]) >= 2);
}
