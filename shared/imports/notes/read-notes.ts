import type { Block, BlockKind, NewId } from "../../episode";
import { asSentence } from "../lines/write";
import { textIn } from "../source/words";
import type { NotUnderstood, Word } from "../types";
import { circuitOf, lineInCircuit, type Circuit } from "./circuit";
import { columnsOf, inColumns } from "./columns";
import { headOf, type Head } from "./head";
import { labelOf, rampOf, type Labelled } from "./labels";
import { isFarewell, isGreeting, partOf, type PartRead } from "./parts";
import { rowsOf, weekOf, type Row } from "./rows";
import { kindOfLine, NotesSheet } from "./sheet";
import { additionIn, holdsAll, holdsFigures, isSetLine, rampsIn, setLineIn, toldIn, writtenIn, type Reading } from "./written";

/** Notes as a coach types them: one thing a line, with or without labels, bullets, numbers and headings. */

export interface NotesRead {
  readonly blocks: readonly Block[];
  /** What stands over the notes, where something does. */
  readonly title: string | null;
  readonly notUnderstood: readonly NotUnderstood[];
  readonly units: "kg" | "lb";
  readonly lines: number;
}

/** One row with all it may be, before its place is looked at. */
interface Seen {
  readonly row: Row;
  readonly head: Head | null;
  readonly part: PartRead | null;
  readonly isLabelled: boolean;
  /** Sets and nothing else. */
  readonly isSets: boolean;
}

/** "Last week 3x8 @ 55 kg" is no plan. */
const EARLIER = /^(?:last (?:week|time|session|month)|previous(?:ly)?|prev|pb|pr|e?1rm|best)\b/i;
/** Names a stretch of the session, no exercise: held for the block below it. */
const SECTION = new RegExp(String.raw`^(?:${[
  String.raw`(?:the )?(?:main|strength|power|accessor(?:y|ies)|assistance|conditioning|finishers?|metcon|circuit|super-?sets?|tri-?sets?|giant sets?|block|part|section|round|day|week|session|phase)`,
  String.raw`upper(?: body)?|lower(?: body)?|full body|push|pull|legs?|arms?|core|abs|workout|training|lifts?|exercises?|programme?|plan|work|equipment|kit`,
].join("|")})\b`, "i");
/** Of those, what is never the name of an episode. */
const STRETCH = /^(?:main|strength|conditioning|accessor|circuit|super-?set|block|part|section|round|phase)\b/i;
/** A figure with its name, on a row of its own. */
const FIELD = /^(?:sets|reps|rounds|load|weight|rest|tempo|rir|rpe|time|distance)\s*[:=-]?\s*(?:[\d@]|amrap|max)/i;

const unitIn = (words: readonly Word[]): "kg" | "lb" => {
  const count = (unit: RegExp): number => words.filter(({ text }) => unit.test(text)).length;
  return count(/(?:^|\d)(?:lbs?|pounds?)\b|\d#/i) > count(/(?:^|\d)(?:kgs?|kilos?)\b/i) ? "lb" : "kg";
};

const isEasy = ({ exercise }: Head): boolean => exercise !== null && (exercise.family === "mobility-warmup" || exercise.family === "cooldown-stretch");

function seen(row: Row, unit: "kg" | "lb"): Seen {
  const label = labelOf(row.text);
  const part = label === null || label.behind === "" ? partOf(row.text) : null;
  const sets = circuitOf(row) === null ? writtenIn(row.words, unit) : null;
  const isSets = sets !== null ? sets.from === 0 && sets.to === row.words.length : circuitOf(row) === null && isSetLine(row.text);
  const isNoHead = label !== null || part !== null || isSets || EARLIER.test(row.text) || weekOf(row) !== null || rampOf(row.text) !== null || row.words.length === 0;
  return { row, head: isNoHead ? null : headOf(row, unit), part, isLabelled: label !== null, isSets };
}

/** Notes to blocks. Every word stands in a title, a set line or a line of the block; bullets, numbers and labels are listed. */
class Reader {
  private readonly sheet: NotesSheet;
  private readonly rows: readonly Seen[];
  private readonly unit: "kg" | "lb";
  /** Do numbers count exercises, so that a numbered row is one whatever it is called? */
  private readonly numbersAreHeads: boolean;
  private title: string | null = null;
  /** A label that stood alone, for the rows below it. */
  private under: Labelled | null = null;
  private circuit: Circuit | null = null;
  private columns: readonly string[] | null = null;
  /** How the row was marked that opened the block. */
  private openedBy: Row["level"] = "none";
  private firstWeek = -1;
  /** Light sets that stand above their exercise. */
  private rampAbove: { readonly label: string; readonly behind: string; readonly written: string } | null = null;
  /** A row after an empty line has come since the part was opened. */
  private isPastParagraph = false;

  constructor(words: readonly Word[], newId: NewId) {
    this.sheet = new NotesSheet(newId);
    this.unit = unitIn(words);
    this.rows = rowsOf(words).map((row) => seen(row, this.unit));
    const numbered = this.rows.filter(({ row }) => row.level === "number");
    this.numbersAreHeads = numbered.filter(({ head, part }) => part !== null || (head !== null && (head.sets !== null || (head.name === "known" && (head.isBare || head.told.length > 0))))).length >= numbered.length / 2;
  }

  read(): NotesRead {
    this.rows.forEach((one, at) => this.take(one, at));
    if (this.rampAbove !== null) this.sheet.line(this.rampAbove.written);
    this.sheet.close();
    return { blocks: this.sheet.blocks, title: this.title, notUnderstood: this.sheet.listed, units: this.unit, lines: this.rows.length };
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
    if (this.under !== null) return this.underLabel(this.under, row.text);
    if (EARLIER.test(row.text) && sheet.inExercise) return sheet.add("note", asSentence(row.text, false));
    if (this.isHeading(one, at)) return sheet.wait(row.text);
    sheet.line(row.text);
  }

  /** The first row names the episode when nothing else can be made of it and something begins below it. */
  private asTitle({ row, head, part, isLabelled, isSets }: Seen, at: number): boolean {
    const next = this.rows[at + 1];
    const isBareName = head === null || head.name !== "known" || /\b(?:day|session|workout|training|episode|ep|week)\b/i.test(row.text) || (head.isBare && isPartOrHead(next) && next?.part?.behind === "");
    if (at > 0 || next === undefined || part !== null || isLabelled || isSets || !isBareName || head?.sets || isSetsBelow(next)) return false;
    const isMarked = row.marks.some((mark) => mark.startsWith("#"));
    const isShort = row.text.length <= 70 && row.words.length <= 10 && (row.level === "none" || isMarked);
    if (!isShort || STRETCH.test(row.text) || isGreeting(row.words) || circuitOf(row) !== null || columnsOf(row) !== null || /[a-z][.,]\s|[.,]$|\d\s*[x×]\s*\d/i.test(row.text) || !(isMarked || next.row.apart || isPartOrHead(next) || circuitOf(next.row) !== null || columnsOf(next.row) !== null)) return false;
    this.title = row.text.replace(/[\s*:_]+$/, "");
    this.sheet.hold(this.title);
    return true;
  }

  private asLabelled({ row }: Seen): boolean {
    const label = labelOf(row.text);
    if (label?.kind === "ramp-up" && this.rampAbove !== null) return false;
    if (label === null || (label.behind === "" && partOf(row.text) !== null)) return false;
    const { sheet } = this;
    if (FIELD.test(row.text) && sheet.inExercise && !isSetLine(label.behind)) {
      this.addition({ text: row.text, remark: null }, row.text);
      return true;
    }
    if (label.kind === "ramp-up" && label.behind !== "" && !sheet.inExercise) {
      this.rampAbove = { label: label.label, behind: label.behind, written: row.text };
      sheet.hold(row.text);
      return true;
    }
    sheet.mark(label.label);
    this.under = label.behind === "" ? label.kind : null;
    if (label.behind !== "") this.underLabel(label.kind, label.behind);
    return true;
  }

  private underLabel(kind: Labelled, text: string): void {
    const { sheet } = this;
    if (kind === "sets") {
      const read = setLineIn(text, this.unit);
      sheet.set("working", read !== null && read.text !== text && holdsAll([read.text], text) ? read.text : text);
      if (read?.remark && holdsAll([read.text], text)) sheet.list(text, "range", read.remark);
    } else if (kind === "ramp-up") this.ramps(text);
    else if (kind === "if taken") sheet.alternate(text);
    else sheet.add(kind, text);
  }

  /** Tells of a choice that was made, and of figures that stand in no set line. */
  private remark({ text }: Row, lines: readonly string[], choice: string | null, hasSets: boolean): void {
    if (choice !== null) this.sheet.list(text, "range", choice);
    else if (hasSets && !holdsFigures(lines, text)) this.sheet.list(text, "scheme", "Not every figure of this row stands in its set lines; the row was kept as a note.");
  }

  /** What only adds to set lines. Where that took a choice, the row is kept as well. */
  private addition({ text, remark }: Reading, written: string): void {
    if (!this.sheet.addition(text) || remark === null) return;
    this.sheet.list(written, "range", remark);
    if (!holdsAll([text], written)) this.sheet.add("note", written);
  }

  /** Light sets; their weights alone make no set line. */
  private ramps(text: string): boolean {
    const lines = rampsIn(text, this.unit);
    for (const line of lines ?? []) this.sheet.set("ramp-up", line);
    if (lines !== null && holdsAll(lines, text)) return true;
    this.sheet.add("note", text);
    if (lines === null) this.sheet.list(text, "scheme", "These light sets lack their reps, or a weight in figures; it was kept as a note.");
    return lines !== null;
  }

  private asPart({ row, part }: Seen): boolean {
    if (part === null) return false;
    const { sheet } = this;
    const hasExercise = sheet.blocks.some(({ kind }) => kind === "exercise");
    // Within an exercise "warm up 2x10" is light sets, and "start: feet wide" or "end: squeeze" a line.
    if (sheet.inExercise && !row.apart && row.level !== "number" && part.behind !== "") {
      if (part.kind === "warm-up" && /\d\s*[x×@]|[x×@]\s*\d/.test(part.behind)) return this.asRamp({ row });
      if (/^(?:start|end(?:ing)?|hook|prep|activation|stretch|general|notes?)$/i.test(part.title)) return false;
    }
    if (part.kind === "opening" && hasExercise) return false;
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
    const cells = inColumns(row, this.columns, this.unit);
    const head = cells && headOf({ ...row, words: cells.name }, this.unit);
    if (cells === null || head === null) return false;
    this.openHead(row, head);
    sheet.set("working", cells.line);
    if (cells.notes !== "") sheet.line(cells.notes);
    return true;
  }

  private asCircuit({ row, head }: Seen, at: number): boolean {
    const circuit = circuitOf(row);
    const isNamed = head?.name === "known" && head.exercise !== null;
    // Right below "Warm-up" it tells how often the warm-up is done.
    const isOfPart = this.sheet.inEasyPart && !row.apart && this.rows[at - 1]?.part?.behind === "";
    if (circuit === null || isNamed || isOfPart) return false;
    this.circuit = circuit;
    this.under = null;
    this.sheet.wait(row.text);
    return true;
  }

  /** Sets of several weeks: an episode shows one, so the first makes the set lines. */
  private asWeek({ row }: Seen): boolean {
    const week = weekOf(row);
    const sets = week && writtenIn(week.behind, this.unit);
    if (week === null || sets === null || !this.sheet.inExercise) return false;
    const isFirst = this.firstWeek === -1 || this.firstWeek === week.week;
    if (isFirst && this.sheet.last?.sets.length === 0) {
      this.firstWeek = week.week;
      for (const line of sets.lines) this.sheet.set("working", line);
      const label = textIn(row.words, 0, row.words.length - week.behind.length);
      if (sets.isWhole && sets.from === 0 && sets.to === week.behind.length) {
        this.sheet.mark(label);
        return true;
      }
    } else this.sheet.list(row.text, "range", "Sets of another week; the first week's are the set lines, and this was kept as a note.");
    this.sheet.add("note", row.text);
    return true;
  }

  private asRamp({ row }: { readonly row: Row }): boolean {
    const ramp = this.sheet.inExercise ? rampOf(row.text) : null;
    if (ramp === null) return false;
    this.sheet.mark(ramp.label);
    this.ramps(ramp.behind);
    return true;
  }

  private asHead(one: Seen, at: number): boolean {
    const { row } = one;
    const head = this.circuit === null ? one.head : (this.inCircuit(one, this.circuit) ?? one.head);
    if (head === null || !this.opens(one, head, at)) return false;
    const { sheet } = this;
    const { lines } = this.setsOf(head);
    const kept = this.columns?.includes("week") === true ? lines.slice(0, 1) : lines;
    const isAll = kept.length === lines.length && head.told.length === 0 && (head.sets === null || head.sets.isWhole);
    this.openHead(row, isAll || head.sets === null ? head : { ...head, written: "" });
    for (const line of kept) sheet.set("working", line);
    if (head.sets === null && head.told.length === 0 && lines.length > 0 && this.circuit?.isOpen === true) sheet.list(row.text, "range", "As many rounds as there is time for; one was written.");
    if (head.addition !== null && lines.length === 0) this.addition(head.addition, head.addition.text);
    this.remark(row, lines, head.sets?.remark ?? null, head.sets?.isWhole === false || head.told.length > 0);
    if (!isAll) {
      // The row says more than its set lines do, or says it otherwise.
      sheet.add("note", head.sets === null ? head.behind : textIn(row.words, 0, row.words.length));
      if (kept.length < lines.length) sheet.list(row.text, "range", "Sets of several weeks; the first week's are the set lines.");
      if (head.sets !== null) return true;
    }
    if (head.behind !== "" && head.told.length === 0) this.behind(head.behind);
    if (head.count !== "" && lines.length === 0) {
      sheet.add("note", head.count);
      sheet.list(row.text, "scheme", "The number of sets is missing; it was kept as a note.");
    }
    return true;
  }

  /** What stands behind the sets, with labels or without: "cue: chest tall, avoid: knees caving". */
  private behind(text: string): void {
    for (const piece of text.split(/[,;]\s+(?=[a-z' ]{2,14}:\s)/i)) {
      const label = labelOf(piece);
      if (label === null || label.behind === "") this.sheet.line(piece);
      else {
        this.sheet.mark(label.label);
        this.underLabel(label.kind, label.behind);
      }
    }
  }

  private openHead(row: Row, head: Head): void {
    const { sheet } = this;
    sheet.open("exercise", { title: head.title, exercise: head.exercise?.id ?? null }, row.group);
    if (head.written !== "") sheet.add("note", head.written);
    const ramp = this.rampAbove;
    this.rampAbove = null;
    if (ramp !== null) {
      sheet.mark(ramp.label);
      this.ramps(ramp.behind);
    }
    this.under = null;
    this.openedBy = row.level;
    this.isPastParagraph = false;
  }

  private setsOf(head: Head): { readonly lines: readonly string[] } {
    if (head.sets !== null) return { lines: head.sets.lines };
    if (head.told.length > 0) return { lines: head.told };
    const line = this.circuit && lineInCircuit(this.circuit, head.count === "" ? (head.addition?.text ?? "") : head.count);
    return { lines: line === null || line === undefined ? [] : [line] };
  }

  /** "10 goblet squats @ 16 kg" below "3 rounds:"; the figure before the name counts. */
  private inCircuit({ row, head }: Seen, circuit: Circuit): Head | null {
    const from = row.words.findIndex(({ text }) => !/\d/.test(text) && !/^(?:x|×|s|secs?|mins?|m|reps?|of|each|per|side|leg|arm)$/i.test(text));
    if (from < 1 || (head !== null && head.sets !== null)) return null;
    const named = headOf({ ...row, words: row.words.slice(from) }, this.unit);
    const before = textIn(row.words, 0, from).replace(/\s*(?:x|×|of)$/i, "");
    const said = named === null ? "" : `${before} ${named.addition?.text ?? ""}`.trim();
    return named === null || named.sets !== null || lineInCircuit(circuit, said) === null ? null : { ...named, count: said, addition: null, isBare: false };
  }

  /** Does the row begin an exercise, where it stands? */
  private opens(one: Seen, head: Head, at: number): boolean {
    const { row } = one;
    const isOrdered = row.level === "number";
    const hasSets = head.sets !== null || head.told.length > 0;
    // A list below a numbered exercise, or below one without a mark, tells about it.
    const isBelow = row.level === "bullet" && this.sheet.inExercise && this.openedBy !== "bullet" && !row.apart;
    if (this.under !== null && isBelow && !(head.name === "known" && hasSets)) return false;
    if (this.sheet.inEasyPart && this.staysEasy(row, head, at)) return false;
    if (this.circuit !== null && !row.apart && head.name !== "unknown" && (head.count !== "" || head.isBare)) return true;
    if (this.circuit !== null && (head.count !== "" || (head.isBare && this.circuit.interval !== null && kindOfLine(row.text) === "note"))) return true;
    const setsBelow = this.hasSetsBelow(at);
    if (head.name === "unknown") {
      if (hasSets) return !isBelow;
      const isFresh = !this.sheet.inExercise || (this.sheet.last?.sets.length ?? 0) > 0;
      return !isBelow && ((isOrdered && this.numbersAreHeads) || (setsBelow !== "none" && (row.apart || isOrdered || (isFresh && setsBelow === "next"))));
    }
    if (hasSets) return true;
    if (head.name === "likely" && !isOrdered && setsBelow === "none") return false;
    if (head.isBare || head.addition !== null) return true;
    if (head.count !== "") return isOrdered || row.apart || row.level === "bullet" || !this.sheet.inExercise;
    return isOrdered || setsBelow === "next" || /[:–—-]$/.test(row.words[row.words.length - wordsIn(head.behind) - 1]?.text ?? "");
  }

  /** Sets on the next row, or further down before another exercise or an empty line. */
  private hasSetsBelow(at: number): "next" | "later" | "none" {
    for (let below = at + 1; below <= at + 4; below += 1) {
      const next = this.rows[below];
      if (next === undefined || next.row.apart || next.part !== null || next.head?.sets || (below > at + 1 && next.head?.name === "known")) return "none";
      if (isSetsBelow(next)) return below === at + 1 ? "next" : "later";
    }
    return "none";
  }

  /** Does a row below "Warm-up" still belong to it? */
  private staysEasy(row: Row, head: Head, at: number): boolean {
    if (this.circuit !== null) return false;
    if (isEasy(head)) return true;
    if (row.level === "number" && this.openedBy === "number" && head.sets !== null) return false;
    if (this.isPastParagraph) return head.name !== "known" && head.sets === null && head.told.length === 0 && row.level !== "number";
    const part = this.rows.slice(at + 1).findIndex((next) => next.part !== null);
    const rest = this.rows.slice(at + 1, part === -1 ? undefined : at + 1 + part);
    // An empty line further down ends the part; where none comes, only what is plainly work does.
    if (rest.some((next) => next.row.apart && next.head !== null)) return true;
    const line = head.sets?.lines[0] ?? "";
    const isWork = /kg|lb|%|rir|rpe|tempo/i.test(line) || Number.parseInt(line, 10) >= 3;
    const isMarkedAlike = row.level === "bullet" && this.openedBy !== "bullet";
    return isMarkedAlike || !(isWork || (head.name === "known" && head.sets === null && this.hasSetsBelow(at) === "next"));
  }

  private asSets({ row, isSets }: Seen, at: number): boolean {
    const { sheet } = this;
    if (!sheet.inExercise || EARLIER.test(row.text)) return false;
    const text = row.text.replace(/[.;]$/, "");
    const found = /\d/.test(text) ? writtenIn(row.words, this.unit, true) : null;
    if (found !== null && (isSets || found.from === 0 || row.words.slice(0, found.from).every(({ plain }) => /^(?:then|top|back|off|back-off|backoff|working|work|main|heavy|light|last|first|final|sets?|scheme|and|plus|drop|do|amrap|)$/.test(plain)))) {
      const isRamp = found.isRising && isSetsBelow(this.rows[at + 1]);
      for (const line of found.lines) sheet.set(isRamp ? "ramp-up" : "working", line);
      this.remark({ ...row, words: row.words.slice(0, found.to), text: textIn(row.words, 0, found.to) }, found.lines, found.remark, !found.isWhole);
      const isLabelled = found.from > 0;
      if (isLabelled || !found.isWhole) sheet.add("note", row.text);
      else if (found.to < row.words.length) sheet.line(textIn(row.words, found.to, row.words.length).replace(/^[\s,;:.–—-]+/, "") || row.text);
      return true;
    }
    const addition = additionIn(text, this.unit) ?? (FIELD.test(text) ? { text, remark: null } : null);
    if (addition !== null) {
      this.addition(addition, text);
      return true;
    }
    const told = sheet.last?.sets.length === 0 ? toldIn(row.words) : [];
    for (const line of told) sheet.set("working", line);
    if (told.length > 0) sheet.add("note", row.text);
    this.remark(row, told, null, told.length > 0);
    return told.length > 0;
  }

  /** "Block A", "Main lifts:", "STRENGTH": said of what begins below. */
  private isHeading({ row, head }: Seen, at: number): boolean {
    const next = this.rows[at + 1];
    const isTitled = SECTION.test(row.text) || row.text.endsWith(":") || row.apart || (row.text === row.text.toUpperCase() && /\p{L}{3}/u.test(row.text));
    return next !== undefined && isTitled && row.words.length <= 6 && row.level !== "bullet" && (head === null || head.name === "unknown") && (next.head?.sets !== undefined && next.head?.sets !== null || (next.head?.name === "known" && next.head.isBare) || circuitOf(next.row) !== null || columnsOf(next.row) !== null);
  }
}

const wordsIn = (text: string): number => text.split(" ").filter((word) => word !== "").length;
const isPartOrHead = (one: Seen | undefined): boolean => one !== undefined && (one.part !== null || (one.head !== null && (one.head.sets !== null || one.head.name === "known")));
const isSetsBelow = (one: Seen | undefined): boolean => one !== undefined && (one.isSets || (one.isLabelled && labelOf(one.row.text)?.kind === "sets"));

/** Notes to blocks. */
export const readNotes = (words: readonly Word[], newId: NewId): NotesRead => new Reader(words, newId).read();
