import type { Block, BlockKind, NewId } from "../../episode";
import { asSentence } from "../lines/write";
import type { NotUnderstood, Word } from "../types";
import { headInCircuit, type Circuit } from "./circuit";
import { columnsOf, inColumns } from "./columns";
import type { Head } from "./head";
import { labelOf, type Labelled, type LabelRead } from "./labels";
import { isFarewell, isGreeting, partOf } from "./parts";
import { beginsExercise, circuitAt, isHeading, numbersAreHeads, partWithin, titleIn, type Place } from "./place";
import { rowsOf, unitIn, weekOf, type Row } from "./rows";
import { isEarlier, isField, isSetsRow, seen, type Seen } from "./seen";
import { NotesSheet } from "./sheet";
import { setsOfHead, writeHead } from "./write-head";
import { writeLabelled } from "./write-labelled";
import { writeAddition, writeRampRow, writeRamps, writeSets, writeWeek } from "./write-sets";
import { isSetLine, writtenIn } from "./written";

/** Notes as a coach types them: one thing a line, with or without labels, bullets, numbers and headings. */

export interface NotesRead {
  readonly blocks: readonly Block[];
  /** What stands over the notes, where something does. */
  readonly title: string | null;
  readonly notUnderstood: readonly NotUnderstood[];
  readonly units: "kg" | "lb";
  readonly lines: number;
}

/** Notes to blocks. Every word stands in a title, a set line or a line of the block; bullets, numbers and labels are listed. */
class Reader {
  private readonly sheet: NotesSheet;
  private readonly rows: readonly Seen[];
  private readonly numbersAreHeads: boolean;
  private title: string | null = null;
  /** A label that stood alone, for the rows below it. */
  private under: Labelled | null = null;
  private circuit: Circuit | null = null;
  private columns: readonly string[] | null = null;
  private openedBy: Row["level"] = "none";
  private firstWeek = -1;
  /** Light sets that stand above their exercise. */
  private rampAbove: (LabelRead & { readonly written: string }) | null = null;
  private isPastParagraph = false;

  constructor(words: readonly Word[], newId: NewId) {
    const unit = unitIn(words);
    this.sheet = new NotesSheet(newId, unit);
    this.rows = rowsOf(words).map((row) => seen(row, unit));
    this.numbersAreHeads = numbersAreHeads(this.rows);
  }

  read(): NotesRead {
    const { sheet } = this;
    this.rows.forEach((one, at) => this.take(one, at));
    if (this.rampAbove !== null) sheet.line(this.rampAbove.written);
    sheet.close();
    return { blocks: sheet.blocks, title: this.title, notUnderstood: sheet.listed, units: sheet.unit, lines: this.rows.length };
  }

  private take(one: Seen, at: number): void {
    const { group, marks } = one.row;
    const { sheet } = this;
    sheet.mark(...marks.filter((mark) => group === null || !mark.toUpperCase().includes(group)));
    sheet.beginRow();
    if (one.row.words.length > 0) this.place(one, at);
    sheet.endRow(one.row.text);
    if (group !== null && !sheet.isOf(group)) sheet.mark(group);
  }

  private place(one: Seen, at: number): void {
    const { row } = one;
    const { sheet } = this;
    if (row.apart) this.isPastParagraph = true;
    if (row.apart && row.level !== "bullet") this.under = null;
    const steps = [this.asTitle, this.asLabelled, this.asPart, this.asGreeting, this.asTable, this.asCircuit, this.asWeek, this.asRamp, this.asHead, this.asSets];
    if (steps.some((step) => step.call(this, one, at))) return;
    if (this.under !== null) return writeLabelled(sheet, this.under, row.text);
    if (isEarlier(row.text) && sheet.inExercise) return sheet.add("note", asSentence(row.text, false));
    if (isHeading(one, this.rows[at + 1])) return sheet.wait(row.text);
    sheet.line(row.text);
  }

  private placeAt(at: number): Place {
    const { rows, circuit, openedBy, isPastParagraph, sheet } = this;
    const { inExercise, inEasyPart, last } = sheet;
    const hasSets = last !== undefined && last.sets.length > 0;
    return { rows, at, numbersAreHeads: this.numbersAreHeads, isUnderLabel: this.under !== null, circuit, openedBy, isPastParagraph, inExercise, inEasyPart, hasSets };
  }

  private asTitle(_: Seen, at: number): boolean {
    const title = at === 0 ? titleIn(this.rows) : null;
    if (title === null) return false;
    this.title = title;
    this.sheet.hold(title);
    return true;
  }

  private asLabelled({ row }: Seen): boolean {
    const label = labelOf(row.text);
    if (label?.kind === "ramp-up" && this.rampAbove !== null) return false;
    if (label === null || (label.behind === "" && partOf(row.text) !== null)) return false;
    const { sheet } = this;
    if (isField(row.text) && sheet.inExercise && !isSetLine(label.behind)) {
      writeAddition(sheet, { text: row.text, remark: null }, row.text);
      return true;
    }
    if (label.kind === "ramp-up" && label.behind !== "" && !sheet.inExercise) {
      this.rampAbove = { ...label, written: row.text };
      sheet.hold(row.text);
      return true;
    }
    sheet.mark(label.label);
    this.under = label.behind === "" ? label.kind : null;
    if (label.behind !== "") writeLabelled(sheet, label.kind, label.behind);
    return true;
  }

  private asPart({ row, part }: Seen): boolean {
    if (part === null) return false;
    const { sheet } = this;
    const within = sheet.inExercise ? partWithin(row, part) : "part";
    if (within === "ramp-up") return writeRampRow(sheet, row);
    if (within === "line" || (part.kind === "opening" && sheet.blocks.some(({ kind }) => kind === "exercise"))) return false;
    const isShort = /^[wc]\/?[ud]$/i.test(part.title);
    if (isShort) sheet.mark(part.title);
    this.openPart(part.kind, isShort ? "" : part.title);
    this.openedBy = row.level;
    if (part.behind !== "") sheet.line(part.behind);
    return true;
  }

  private openPart(kind: BlockKind, title: string): void {
    this.sheet.open(kind, { title });
    this.under = null;
    this.circuit = null;
    this.columns = null;
    this.isPastParagraph = false;
  }

  private asGreeting({ row }: Seen, at: number): boolean {
    const { sheet } = this;
    const isFirst = sheet.blocks.length === 0 && isGreeting(row.words);
    const isLast = at >= this.rows.length - 3 && isFarewell(row.words) && sheet.blocks.some(({ kind }) => kind === "exercise" || kind === "cool-down");
    if (!isFirst && !isLast) return false;
    if (isFirst || sheet.last?.kind !== "closing") this.openPart(isFirst ? "opening" : "closing", "");
    sheet.line(row.text);
    return true;
  }

  private asTable({ row }: Seen): boolean {
    const { sheet } = this;
    const columns = columnsOf(row);
    if (columns !== null) {
      this.columns = columns;
      sheet.mark(row.text);
      return true;
    }
    if (this.columns === null || this.columns.includes("week")) return false;
    const cells = inColumns(row, this.columns, sheet.unit);
    if (cells === null) return false;
    this.openHead(row, cells.head);
    sheet.set("working", cells.line);
    if (cells.notes !== "") sheet.line(cells.notes);
    return true;
  }

  private asCircuit(one: Seen, at: number): boolean {
    const circuit = circuitAt(one, this.placeAt(at));
    if (circuit === null) return false;
    this.circuit = circuit;
    this.under = null;
    this.sheet.wait(one.row.text);
    return true;
  }

  /** Sets of several weeks: an episode shows one, so the first makes the set lines. */
  private asWeek({ row }: Seen): boolean {
    const { sheet } = this;
    const week = weekOf(row);
    const sets = week && writtenIn(week.behind, sheet.unit);
    if (week === null || sets === null || !sheet.inExercise) return false;
    const isShown = (this.firstWeek === -1 || this.firstWeek === week.week) && sheet.last?.sets.length === 0;
    if (isShown) this.firstWeek = week.week;
    writeWeek(sheet, row, sets, week.behind, isShown);
    return true;
  }

  private asRamp({ row }: Seen): boolean {
    return writeRampRow(this.sheet, row);
  }

  private asHead(one: Seen, at: number): boolean {
    const { row } = one;
    const { circuit, sheet } = this;
    const head = circuit === null ? one.head : (headInCircuit(circuit, row, one.head, sheet.unit) ?? one.head);
    if (head === null || !beginsExercise(row, head, this.placeAt(at))) return false;
    const sets = setsOfHead(head, circuit, this.columns?.includes("week") === true);
    // A row that is kept whole has the name as it is written.
    this.openHead(row, sets.isAll || head.sets === null ? head : { ...head, written: "" });
    writeHead(sheet, row, head, sets);
    return true;
  }

  private openHead(row: Row, head: Head): void {
    const { sheet } = this;
    sheet.open("exercise", { title: head.title, exercise: head.exercise?.id ?? null }, row.group);
    if (head.written !== "") sheet.add("note", head.written);
    if (this.rampAbove !== null) {
      sheet.mark(this.rampAbove.label);
      writeRamps(sheet, this.rampAbove.behind);
    }
    this.rampAbove = null;
    this.under = null;
    this.openedBy = row.level;
    this.isPastParagraph = false;
  }

  private asSets(one: Seen, at: number): boolean {
    return writeSets(this.sheet, one, isSetsRow(this.rows[at + 1]));
  }
}

/** Notes to blocks. */
export const readNotes = (words: readonly Word[], newId: NewId): NotesRead => new Reader(words, newId).read();
