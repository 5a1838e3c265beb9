import { BLOCK_KIND_NAMES, emptyBlock, MAX_LINES, MAX_TEXT, newLine, type Block, type BlockKind, type LineKind, type NewId } from "../../episode";
import { lineKind } from "../lines/kind";
import { asSentence, piecesOf } from "../lines/write";
import type { NotUnderstood, Reason } from "../types";
import type { Labelled } from "./labels";
import { holdsAll, isSetLine } from "./written";

/** A block has room for so many more of each before it goes on in another. */
const [ROOM_FOR_LINES, ROOM_FOR_SETS, ROOM_FOR_ALTERNATES] = [4, 36, 20];

const LONGEST_TITLE = 200;

const NO_SET_LINE = "There are figures in this line that make no set line; it was kept as a note.";

/** Words typed for a reader, in the form in which sentences are judged. */
const plainOf = (text: string): string =>
  text.toLowerCase().replace(/’/g, "'").replace(/\b(do|does|is|are|ca|wo)nt\b/g, "$1n't").replace(/[^\p{L}\p{N}' -]/gu, "").replace(/\s+/g, " ").trim();

/** The kind of a line among an exercise's. Typed cues are shorter than spoken ones: "elbows up". */
export function kindOfLine(text: string): Extract<LineKind, "cue" | "avoid" | "caution" | "note"> {
  const plain = plainOf(text);
  const kind = lineKind(plain, "general", null, false);
  if (kind !== "say") return kind;
  if (/^(?:no \w+ing|don't (?!forget|worry|need)\w+|do not (?!forget|worry|need)\w+|avoid \w+|never \w+)\b/.test(plain)) return "avoid";
  const isShort = plain.split(" ").length === 2 && /(?:up|down|in|out|back|forward|tall|tight|soft|flat|straight|together|high|low|wide|still|long|level|proud)$/.test(plain);
  return isShort && lineKind(`keep your ${plain}`, "general", null, false) === "cue" ? "cue" : "note";
}

const isAddress = (text: string): boolean => /^[a-z]+:\/\/|^www\./i.test(text);
/** A figure that may count something of a set; "2nd" counts none. */
const hasFigure = (text: string): boolean => /\d(?!\d*(?:st|nd|rd|th)\b)/i.test(text) && !isAddress(text);

/** The draft as it grows, a row of the notes at a time. */
export class NotesSheet {
  readonly blocks: Block[] = [];
  readonly listed: NotUnderstood[] = [];
  /** Bullets, numbers and labels. */
  private readonly marks: string[] = [];
  /** Everything that was written since the row began. */
  private kept: string[] = [];
  /** Headings that wait for the block below them. */
  private waiting: string[] = [];
  /** Figures of the open exercise that make no set line by themselves. */
  private loose: string[] = [];
  private group: string | null = null;

  /** @param unit - of the notes' weights */
  constructor(private readonly newId: NewId, readonly unit: "kg" | "lb") {}

  get last(): Block | undefined {
    return this.blocks.at(-1);
  }

  get inExercise(): boolean {
    return this.last?.kind === "exercise";
  }

  get inEasyPart(): boolean {
    return this.last?.kind === "warm-up" || this.last?.kind === "cool-down";
  }

  /** @param group - "A1" of a pair: it stands before each set line */
  open(kind: BlockKind, fields: Partial<Block> = {}, group: string | null = null): void {
    this.settle();
    const title = fields.title ?? "";
    this.blocks.push(emptyBlock(this.newId, kind, { ...fields, title: title.slice(0, LONGEST_TITLE) || BLOCK_KIND_NAMES[kind] }));
    this.group = group;
    this.kept.push(title, group ?? "");
    if (title.length > LONGEST_TITLE) this.add("note", title);
    const headings = this.waiting;
    this.waiting = [];
    for (const heading of headings) this.add("note", heading);
  }

  /** Keeps bullets, numbers and labels for the list. */
  mark(...marks: readonly string[]): void {
    this.marks.push(...marks);
    this.kept.push(...marks);
  }

  /** A row begins; `endRow` sees to it that none of its words is lost. */
  beginRow(): void {
    this.kept = [];
  }

  /** Keeps the whole row as a note where some word of it stands nowhere yet. */
  endRow(text: string): void {
    if (!holdsAll(this.kept, text)) this.add("note", text);
  }

  /** Counts words as kept that stand outside the blocks. */
  hold(text: string): void {
    this.kept.push(text);
  }

  /** Does the open block bear this label of a pair? */
  isOf(group: string): boolean {
    return this.group === group;
  }

  /** Keeps a heading for the block that is opened next. */
  wait(heading: string): void {
    this.waiting.push(heading);
    this.kept.push(heading);
  }

  private current(): Block {
    const { last } = this;
    const hasRoom = last !== undefined && last.lines.length < MAX_LINES - ROOM_FOR_LINES && last.sets.length < ROOM_FOR_SETS && last.alternates.length < ROOM_FOR_ALTERNATES;
    if (!hasRoom) this.blocks.push(emptyBlock(this.newId, "talk", { title: BLOCK_KIND_NAMES.talk }));
    return this.blocks.at(-1) ?? emptyBlock(this.newId, "talk");
  }

  add(kind: LineKind, text: string): void {
    this.kept.push(text);
    for (const piece of piecesOf(text)) this.current().lines.push(newLine(this.newId, kind, piece));
  }

  alternate(text: string): void {
    this.kept.push(text);
    for (const piece of piecesOf(text)) this.current().alternates.push({ id: this.newId(), text: piece });
  }

  list(text: string, reason: Reason, sentence: string): void {
    this.listed.push({ text, reason, sentence, at: null, block: this.last?.id ?? null });
  }

  /** A set line; what was written before it and only adds to it joins it. */
  set(role: "working" | "ramp-up", text: string): void {
    const full = role === "working" && this.loose.length > 0 ? [text, ...this.loose].join(", ") : text;
    const isFull = full === text || isSetLine(full);
    if (isFull && role === "working") this.loose = [];
    const line = isFull ? full : text;
    if (line.length > MAX_TEXT) return this.add("note", line);
    const labelled = this.group === null ? line : `${this.group}: ${line}`;
    this.kept.push(text);
    this.current().sets.push({ id: this.newId(), role, text: this.group !== null && isSetLine(labelled) ? labelled : line });
  }

  /**
   * "Rest 90 s", "16 kg" on a row of its own: it goes with the working sets above, or waits for those below.
   * @returns whether it stands in set lines now
   */
  addition(text: string): boolean {
    this.kept.push(text);
    const sets = this.last?.sets.filter(({ role }) => role === "working") ?? [];
    if (sets.length > 0 && sets.every((set) => isSetLine(`${set.text}, ${text}`))) {
      for (const set of sets) set.text = `${set.text}, ${text}`;
      return true;
    }
    this.loose.push(text);
    const joined = this.loose.join(", ");
    if (this.loose.length < 2 || sets.length > 0 || !isSetLine(joined)) return false;
    this.loose = [];
    this.set("working", joined);
    return true;
  }

  /** A row that is only words, as a line of the block it stands in. */
  line(text: string, forced: Labelled | null = null): void {
    if (forced !== null && forced !== "sets" && forced !== "ramp-up" && forced !== "if taken") return this.add(forced, asSentence(text, false));
    if (isAddress(text)) return this.add("note", text);
    const kind = this.last?.kind;
    if (kind !== "exercise" && !this.inEasyPart) {
      const isReminder = /^(?:to-?do|do(?:n't|n’t|nt) forget|remember|mention|ask|check|bring|buy|reminder|nb|note)\b/i.test(text);
      return this.add(isReminder ? "note" : "say", asSentence(text, false));
    }
    // "Hips, 2 min" is something to do in a warm-up, and no cue.
    const read = this.inEasyPart && /\d/.test(text) && kindOfLine(text) === "cue" ? "note" : kindOfLine(text);
    this.add(read, asSentence(text, false));
    if (read === "note" && kind === "exercise" && hasFigure(text)) this.list(text, "scheme", NO_SET_LINE);
  }

  /** Ends the block: what waited for a set line in vain becomes notes. */
  settle(): void {
    const { loose } = this;
    this.loose = [];
    for (const text of loose) {
      this.add("note", asSentence(text, false));
      this.list(text, "scheme", NO_SET_LINE);
    }
    if (this.group !== null && this.last?.sets.some(({ text }) => text.startsWith(`${this.group}: `)) !== true) this.marks.push(this.group);
    this.group = null;
  }

  /** The end of the notes. */
  close(): void {
    this.settle();
    const headings = this.waiting;
    this.waiting = [];
    for (const heading of headings) this.line(heading);
    if (this.marks.length > 0) this.listed.push({ text: this.marks.join(" "), reason: "comment", sentence: "Bullets, numbers and labels of the notes.", at: null, block: null });
  }
}
