import { lineInCircuit, type Circuit } from "./circuit";
import type { Head } from "./head";
import type { Row } from "./rows";
import type { NotesSheet } from "./sheet";
import { writeBehind } from "./write-labelled";
import { writeAddition, writeRemark } from "./write-sets";

/** The set lines of a row that begins an exercise. */
export interface HeadSets {
  readonly lines: readonly string[];
  /** Those of them an episode shows. */
  readonly kept: readonly string[];
  /** They say all that the row says of sets. */
  readonly isAll: boolean;
  /** One round of as many as there is time for. */
  readonly isOpen: boolean;
}

function linesOf(head: Head, circuit: Circuit | null): readonly string[] {
  if (head.sets !== null) return head.sets.lines;
  if (head.told.length > 0) return head.told;
  const line = circuit && lineInCircuit(circuit, head.count === "" ? (head.addition?.text ?? "") : head.count);
  return line === null ? [] : [line];
}

/** The set lines of the row, where it stands. @param isOfWeeks - each of them is of another week: the first is shown */
export function setsOfHead(head: Head, circuit: Circuit | null, isOfWeeks: boolean): HeadSets {
  const lines = linesOf(head, circuit);
  const kept = isOfWeeks ? lines.slice(0, 1) : lines;
  const isAll = kept.length === lines.length && head.told.length === 0 && (head.sets === null || head.sets.isWhole);
  const isOpen = head.sets === null && head.told.length === 0 && lines.length > 0 && circuit?.isOpen === true;
  return { lines, kept, isAll, isOpen };
}

/** What the row says behind the name, into the exercise that it opened. */
export function writeHead(sheet: NotesSheet, { text }: Row, head: Head, { lines, kept, isAll, isOpen }: HeadSets): void {
  for (const line of kept) sheet.set("working", line);
  if (isOpen) sheet.list(text, "range", "As many rounds as there is time for; one was written.");
  if (head.addition !== null && lines.length === 0) writeAddition(sheet, head.addition, head.addition.text);
  writeRemark(sheet, text, lines, head.sets?.remark ?? null, head.sets?.isWhole === false || head.told.length > 0);
  if (!isAll) {
    // The row says more than its set lines do, or says it otherwise.
    sheet.add("note", head.sets === null ? head.behind : text);
    if (kept.length < lines.length) sheet.list(text, "range", "Sets of several weeks; the first week's are the set lines.");
    if (head.sets !== null) return;
  }
  if (head.behind !== "" && head.told.length === 0) writeBehind(sheet, head.behind);
  if (head.count !== "" && lines.length === 0) {
    sheet.add("note", head.count);
    sheet.list(text, "scheme", "The number of sets is missing; it was kept as a note.");
  }
}
