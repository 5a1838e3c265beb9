import { textIn } from "../source/words";
import { rampOf } from "./labels";
import type { Row } from "./rows";
import { isEarlier, isField, type Seen } from "./seen";
import type { NotesSheet } from "./sheet";
import { additionIn, holdsAll, holdsFigures, rampsIn, toldIn, writtenIn, type Reading, type Written } from "./written";

/** Sets of a row onto the sheet, with what is told to the coach about them. */

/** Tells of a choice that was made, and of figures that stand in no set line. */
export function writeRemark(sheet: NotesSheet, text: string, lines: readonly string[], choice: string | null, hasSets: boolean): void {
  if (choice !== null) sheet.list(text, "range", choice);
  else if (hasSets && !holdsFigures(lines, text)) sheet.list(text, "scheme", "Not every figure of this row stands in its set lines; the row was kept as a note.");
}

/** What only adds to set lines. Where that took a choice, the row is kept as well. */
export function writeAddition(sheet: NotesSheet, { text, remark }: Reading, written: string): void {
  if (!sheet.addition(text) || remark === null) return;
  sheet.list(written, "range", remark);
  if (!holdsAll([text], written)) sheet.add("note", written);
}

/** Light sets; their weights alone make no set line. */
export function writeRamps(sheet: NotesSheet, text: string): void {
  const lines = rampsIn(text, sheet.unit);
  for (const line of lines ?? []) sheet.set("ramp-up", line);
  if (lines !== null && holdsAll(lines, text)) return;
  sheet.add("note", text);
  if (lines === null) sheet.list(text, "scheme", "These light sets lack their reps, or a weight in figures; it was kept as a note.");
}

/** A row below an exercise that tells of its light sets. @returns whether it does */
export function writeRampRow(sheet: NotesSheet, { text }: Row): boolean {
  const ramp = sheet.inExercise ? rampOf(text) : null;
  if (ramp === null) return false;
  sheet.mark(ramp.label);
  writeRamps(sheet, ramp.behind);
  return true;
}

/** Sets of a week. @param behind - the words behind its number @param isShown - an episode shows one week's alone */
export function writeWeek(sheet: NotesSheet, row: Row, sets: Written, behind: Row["words"], isShown: boolean): void {
  for (const line of isShown ? sets.lines : []) sheet.set("working", line);
  if (!isShown) sheet.list(row.text, "range", "Sets of another week; the first week's are the set lines, and this was kept as a note.");
  const isAll = isShown && sets.isWhole && sets.from === 0 && sets.to === behind.length;
  if (isAll) sheet.mark(textIn(row.words, 0, row.words.length - behind.length));
  else sheet.add("note", row.text);
}

/** Words before sets that only say which they are. */
const OF_SETS = /^(?:then|top|back|off|back-off|backoff|working|work|main|heavy|light|last|first|final|sets?|scheme|and|plus|drop|do|amrap|)$/;

function writeFound(sheet: NotesSheet, { words, text }: Row, found: Written, isRamp: boolean): void {
  for (const line of found.lines) sheet.set(isRamp ? "ramp-up" : "working", line);
  writeRemark(sheet, textIn(words, 0, found.to), found.lines, found.remark, !found.isWhole);
  const hasWordsBefore = found.from > 0;
  if (hasWordsBefore || !found.isWhole) sheet.add("note", text);
  else if (found.to < words.length) sheet.line(textIn(words, found.to, words.length).replace(/^[\s,;:.–—-]+/, "") || text);
}

/**
 * A row below an exercise that tells of its sets, in figures or in words.
 * @param isSetsBelow - sets that get heavier are light ones where others follow
 * @returns whether it tells of any
 */
export function writeSets(sheet: NotesSheet, { row, isSets }: Seen, isSetsBelow: boolean): boolean {
  if (!sheet.inExercise || isEarlier(row.text)) return false;
  const text = row.text.replace(/[.;]$/, "");
  const found = /\d/.test(text) ? writtenIn(row.words, sheet.unit, true) : null;
  if (found !== null && (isSets || row.words.slice(0, found.from).every(({ plain }) => OF_SETS.test(plain)))) {
    writeFound(sheet, row, found, found.isRising && isSetsBelow);
    return true;
  }
  const addition = additionIn(text, sheet.unit) ?? (isField(text) ? { text, remark: null } : null);
  if (addition !== null) {
    writeAddition(sheet, addition, text);
    return true;
  }
  const told = sheet.last?.sets.length === 0 ? toldIn(row.words) : [];
  for (const line of told) sheet.set("working", line);
  if (told.length > 0) sheet.add("note", row.text);
  writeRemark(sheet, row.text, told, null, told.length > 0);
  return told.length > 0;
}
