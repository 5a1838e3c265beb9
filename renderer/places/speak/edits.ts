import { MAX_TEXT, linesOf, type Block, type Edit, type NewId } from "../../../shared/episode";

/** Typed or pasted text as one line: what a line cannot hold becomes a space. */
export const oneLine = (text: string): string => text.replace(/[\u0000-\u001f\u007f\u2028\u2029]+/g, " ");

/** Why a text does not go into one line; null when it does. */
export function tooLong(text: string): string | null {
  if (text.length <= MAX_TEXT) return null;
  return `A line holds at most ${MAX_TEXT} letters, with this it would have ${text.length}. Nothing was put in: take it in parts, each in a line of its own.`;
}

/**
 * The line cut in two at the caret; the second half is a say line of its own, right behind.
 * At its start nothing is cut: an empty line is put before it, and the words keep theirs.
 * @returns the edits, and the line the caret goes to; null for a line without words
 */
export function splitLine(block: Block, line: string, text: string, at: number, newId: NewId): { edits: Edit[]; line: string } | null {
  if (text.trim() === "") return null;
  const id = newId();
  const index = block.lines.findIndex((one) => one.id === line);
  const insert = (text: string, step: 0 | 1): Edit => ({ type: "insert-line", block: block.id, at: index < 0 ? null : index + step, line: { id, kind: "say", text } });
  if (text.slice(0, at).trim() === "") return { line: id, edits: [insert("", 0)] };
  return { line: id, edits: [{ type: "set-line", line, fields: { text: text.slice(0, at).trimEnd() } }, insert(text.slice(at).trimStart(), 1)] };
}

/** The line behind the say line before it, `at` is where the two meet; why they stay apart where they are too long; null for a block's first. */
export function joinLine(block: Block, line: string, text: string): { edits: Edit[]; line: string; at: number } | { problem: string } | null {
  const says = linesOf(block, "say");
  const before = says[says.findIndex((one) => one.id === line) - 1];
  if (!before) return null;
  const joined = [before.text.trimEnd(), text.trimStart()].filter(Boolean).join(" ");
  if (joined.length > MAX_TEXT) return { problem: `A line holds at most ${MAX_TEXT} letters, with the one before it would have ${joined.length}. The two stay apart.` };
  return { line: before.id, at: before.text.trimEnd().length, edits: [{ type: "set-line", line: before.id, fields: { text: joined } }, { type: "remove-line", line }] };
}

/** Where each word of a text begins and ends, breath marks left out: character offsets. */
export function wordOffsets(text: string): { start: number; end: number }[] {
  return Array.from(text.matchAll(/\S+/g), (match) => ({ start: match.index, end: match.index + match[0].length })).filter(({ start, end }) => text.slice(start, end) !== "/");
}

/** The text with a breath marked after its word number `word`, counted from 0. */
export function withBreath(text: string, word: number): string {
  const offset = wordOffsets(text)[word];
  return offset ? `${text.slice(0, offset.end)} / ${text.slice(offset.end).trimStart()}` : text;
}

/** The text without the marked breath after its word number `word`. */
export function withoutBreath(text: string, word: number): string {
  const offset = wordOffsets(text)[word];
  return offset ? text.slice(0, offset.end) + text.slice(offset.end).replace(/^(?:\s+\/)+(?=\s|$)/, "") : text;
}
