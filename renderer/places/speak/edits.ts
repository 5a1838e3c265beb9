import { MAX_TEXT, linesOf, type Block, type Edit, type NewId } from "../../../shared/episode";

/** Typed or pasted text as one line: what a line cannot hold becomes a space. */
export const oneLine = (text: string): string => text.replace(/[\u0000-\u001f\u007f\u2028\u2029]+/g, " ");

/** Why a text does not go into one line; null when it does. */
export function tooLong(text: string): string | null {
  if (text.length <= MAX_TEXT) return null;
  return `A line holds at most ${MAX_TEXT} letters, with this it would have ${text.length}. Nothing was put in: take it in parts, each in a line of its own.`;
}

/**
 * The line cut in two at the caret between words; the second half is a say line of its own, right behind.
 * @returns the edits, and the line the caret goes to; null where one half would be empty
 */
export function splitLine(block: Block, line: string, text: string, at: number, newId: NewId): { edits: Edit[]; line: string } | null {
  const [first, second] = [text.slice(0, at).trimEnd(), text.slice(at).trimStart()];
  if (first.trim() === "" || second === "") return null;
  const id = newId();
  const index = block.lines.findIndex((one) => one.id === line);
  return {
    line: id,
    edits: [{ type: "set-line", line, fields: { text: first } }, { type: "insert-line", block: block.id, at: index < 0 ? null : index + 1, line: { id, kind: "say", text: second } }],
  };
}

/** Where a line of its own is begun by a cut at the edge of the words, which leaves them whole: its place among the block's lines. Null for a cut between words, or without any. */
export function emptyHalf(block: Block, line: string, text: string, at: number): number | null {
  const index = block.lines.findIndex((one) => one.id === line);
  if (text.trim() === "" || index < 0) return null;
  if (text.slice(0, at).trim() === "") return index;
  return text.slice(at).trim() === "" ? index + 1 : null;
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
