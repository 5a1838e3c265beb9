import { parseSetLine } from "../../training";

/** A line that only notes have: a label, a bullet, a number in front, a set line, a heading with a colon. */
const MARKED = /^\s*(?:(?:[-*•#>]+|\d{1,2}[.)])\s+\S|[a-z][a-z -]{1,14}:\s)|:\s*$/i;

/**
 * Notes are lines that each say one thing; speech is running text, wherever its lines end.
 * Short lines count as notes when some of them carry a mark of notes, or none runs on.
 */
export function isNotes(text: string): boolean {
  const lines = text.split(/\r\n|\n|\r/).map((line) => line.trim()).filter((line) => line !== "");
  if (lines.length < 2) return lines.length === 1 && parseSetLine(lines[0] ?? "").ok;
  const marked = lines.filter((line) => MARKED.test(line) || (line.length < 60 && /\d/.test(line) && parseSetLine(line).ok)).length;
  const short = lines.filter((line) => line.length <= 48).length;
  if (marked >= Math.max(2, lines.length * 0.25)) return true;
  return marked >= 1 && lines.length <= 400 && short >= lines.length * 0.7;
}
