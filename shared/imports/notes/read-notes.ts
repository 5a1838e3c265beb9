import { BLOCK_KIND_NAMES, emptyBlock, LINE_KINDS, MAX_LINES, newLine, type Block, type BlockKind, type LineKind, type NewId } from "../../episode";
import { parseSetLine } from "../../training";
import { lineKind } from "../lines/kind";
import { asSentence, piecesOf } from "../lines/write";
import { namesIn, type Mention } from "../names/find";
import { compose } from "../schemes/compose";
import { corrected } from "../schemes/corrections";
import { tokensOf } from "../schemes/figures";
import { statementsIn } from "../schemes/statements";
import { textIn } from "../source/words";
import type { NotUnderstood, Span, Word } from "../types";

/** Notes as a coach types them: one thing a line, with or without labels, bullets, numbers and headings. */

export interface NotesRead {
  readonly blocks: readonly Block[];
  readonly notUnderstood: readonly NotUnderstood[];
  readonly units: "kg" | "lb";
  readonly lines: number;
}

const PARTS: readonly (readonly [RegExp, BlockKind])[] = [
  [/^(?:opening|intro(?:duction)?|start|welcome|hook)$/, "opening"],
  [/^(?:(?:general |quick |short )?warm ?-?up|mobility|prep(?:aration)?|activation)(?: \(?\d+ ?(?:min|mins|minutes)\)?)?$/, "warm-up"],
  [/^(?:cool ?-?down|stretch(?:es|ing)?|wind ?down)(?: \(?\d+ ?(?:min|mins|minutes)\)?)?$/, "cool-down"],
  [/^(?:closing|outro|end(?:ing)?|sign ?off|wrap ?up|goodbye|call to action)$/, "closing"],
  [/^(?:talk|chat|notes?|ideas|thoughts|general|misc)$/, "talk"],
];

const LABELS: Readonly<Record<string, LineKind | "sets" | "ramp-up" | "if taken">> = {
  ...Object.fromEntries(LINE_KINDS.map((kind) => [kind, kind])),
  cues: "cue", do: "cue", "don't": "avoid", dont: "avoid", mistake: "avoid", mistakes: "avoid", fault: "avoid", safety: "caution", careful: "caution", warning: "caution", vo: "say", voiceover: "say", script: "say",
  film: "shot", camera: "shot", shots: "shot", reminder: "note", notes: "note", set: "sets", sets: "sets", scheme: "sets", work: "sets", "ramp up": "ramp-up", "ramp-up": "ramp-up", "warm-up sets": "ramp-up", "if taken": "if taken", alternative: "if taken", alternate: "if taken", swap: "if taken",
};

const BULLET = /^(?:[-–—*•·#>+]+|\d{1,2}[.)]|[a-z]\d?[.)]|\[[ x]?\])$/i;

interface Row {
  readonly span: Span;
  /** Without its bullet. */
  readonly text: string;
  /** The bullet and the number, as they stood. */
  readonly mark: string;
  /** After an empty line. */
  readonly apart: boolean;
}

function rowsOf(words: readonly Word[]): Row[] {
  const rows: Row[] = [];
  let from = 0;
  for (let at = 1; at <= words.length; at += 1) {
    if (at < words.length && words[at]?.edge !== "line" && words[at]?.edge !== "paragraph") continue;
    let start = from;
    while (start < at - 1 && BULLET.test(words[start]?.text ?? "")) start += 1;
    rows.push({ span: { from: start, to: at }, text: textIn(words, start, at), mark: textIn(words, from, start), apart: words[from]?.edge === "paragraph" });
    from = at;
  }
  return rows;
}

const plainHeading = (text: string): string => text.toLowerCase().replace(/^[*_#\s]+|[*_:.\s-]+$/g, "");

/** An exercise's name at the start of a row, or nearly all of it. */
function headOf(words: readonly Word[], { span }: Row, mentions: readonly Mention[]): Mention | null {
  const first = mentions.find(({ from, to }) => from >= span.from && to <= span.to);
  if (!first || first.from > span.from + 1) return null;
  const before = words.slice(span.from, first.from).every(({ plain }) => plain === "" || /^(?:the|exercise|[a-z]\d|\d)$/.test(plain));
  return before ? first : null;
}

/** What is left of a row after its heading. */
const restOf = (words: readonly Word[], from: number, to: number): string => textIn(words, from, to).replace(/^[\s:–—,-]+/, "");

/** A scheme written or told in a row: as it stands when the grammar reads it, else from its words. */
function setsIn(words: readonly Word[], span: Span, text: string): { readonly lines: readonly string[]; readonly whole: boolean } {
  const trimmed = text.replace(/[.;]$/, "");
  if (/\d/.test(trimmed) && parseSetLine(trimmed).ok) return { lines: [trimmed], whole: true };
  const statements = statementsIn(corrected(tokensOf(words, span.from, span.to, new Set(), new Set()))).map((statement) => ({ ...statement, sentence: 0 }));
  return { lines: compose(statements).sets.map((set) => set.text), whole: false };
}

/** Notes to blocks. Every word stands in a title, a set line or a line of the block; bullets and numbers of lists are listed. */
export function readNotes(words: readonly Word[], newId: NewId): NotesRead {
  const rows = rowsOf(words);
  const mentions = namesIn(words, new Set());
  const blocks: Block[] = [];
  const notUnderstood: NotUnderstood[] = [];
  const marks: string[] = [];
  const open = (kind: BlockKind, fields: Partial<Block> = {}): Block => {
    const block = emptyBlock(newId, kind, fields);
    blocks.push(block);
    return block;
  };
  const current = (): Block => {
    const last = blocks.at(-1);
    if (!last) return open("talk", { title: BLOCK_KIND_NAMES.talk });
    return last.lines.length < MAX_LINES - 4 && last.sets.length < 36 ? last : open("talk", { title: BLOCK_KIND_NAMES.talk });
  };
  const addLine = (kind: LineKind, text: string): void => {
    for (const piece of piecesOf(text)) current().lines.push(newLine(newId, kind, piece));
  };
  const addSet = (role: "working" | "ramp-up", text: string): void => void current().sets.push({ id: newId(), role, text });

  for (const row of rows) {
    if (row.mark !== "") marks.push(row.mark);
    const label = /^([a-z][a-z' -]{0,14}?)\s*:\s*(\S.*)$/i.exec(row.text);
    const labelled = label ? LABELS[(label[1] ?? "").toLowerCase()] : undefined;
    const part = PARTS.find(([name]) => name.test(plainHeading(label && labelled === undefined ? (label[1] ?? "") : row.text)));
    if (label && labelled !== undefined) {
      const text = label[2] ?? "";
      marks.push(label[1] ?? "");
      if (labelled === "sets" || labelled === "ramp-up") addSet(labelled === "sets" ? "working" : "ramp-up", text.slice(0, 4000));
      else if (labelled === "if taken") current().alternates.push({ id: newId(), text: text.slice(0, 4000) });
      else addLine(labelled, text);
      continue;
    }
    if (part) {
      const isWhole = !(label && labelled === undefined);
      const heading = (isWhole ? row.text : (label?.[1] ?? "")).replace(/^[*_#\s]+|[*_:\s]+$/g, "");
      open(part[1], { title: heading.slice(0, 200) || BLOCK_KIND_NAMES[part[1]] });
      if (!isWhole) addLine(lineKind((label?.[2] ?? "").toLowerCase(), "general", null, /\d/.test(label?.[2] ?? "")), label?.[2] ?? "");
      continue;
    }
    const head = headOf(words, row, mentions);
    const easy = ["warm-up", "cool-down"].includes(blocks.at(-1)?.kind ?? "") && row.mark !== "" && !row.apart;
    const rest = head ? restOf(words, head.to, row.span.to) : "";
    const inRest = head && rest !== "" ? setsIn(words, { from: head.to, to: row.span.to }, rest) : { lines: [], whole: false };
    const isHeading = head !== null && !easy && (rest === "" || inRest.lines.length > 0 || (row.span.to - head.to <= 3 && /^[([]/.test(rest)));
    if (head && isHeading) {
      const written = textIn(words, row.span.from, head.to).replace(/[:,;–—-]+$/, "");
      const same = written.toLowerCase() === head.name.title.toLowerCase();
      open("exercise", { title: (same || head.name.exercise === null ? written : head.name.title).slice(0, 200), exercise: head.name.exercise?.id ?? null });
      if (!same && head.name.exercise !== null) addLine("note", written);
      for (const line of inRest.lines) addSet("working", line);
      if (rest !== "" && !(inRest.whole && inRest.lines.length > 0)) addLine("note", rest);
      continue;
    }
    const sets = blocks.at(-1)?.kind === "exercise" ? setsIn(words, row.span, row.text) : { lines: [], whole: false };
    for (const line of sets.lines) addSet("working", line);
    if (sets.whole && sets.lines.length > 0) continue;
    const block = blocks.at(-1);
    const inExercise = block !== undefined && ["exercise", "warm-up", "cool-down"].includes(block.kind);
    const kind = inExercise ? lineKind(row.text.toLowerCase().replace(/[^\p{L}\p{N}' -]/gu, "").replace(/\s+/g, " ").trim(), "general", null, sets.lines.length > 0) : "say";
    addLine(sets.lines.length > 0 ? "note" : kind === "say" && inExercise ? "note" : kind, asSentence(row.text, false));
    if (sets.lines.length === 0 && inExercise && kind === "say" && /\d/.test(row.text)) {
      notUnderstood.push({ text: row.text, reason: "scheme", sentence: "There are figures in this line that make no set line; it was kept as a note.", at: null, block: block.id });
    }
  }
  if (marks.length > 0) notUnderstood.push({ text: marks.join(" "), reason: "comment", sentence: "Bullets, numbers and labels of the notes.", at: null, block: null });
  const all = blocks.flatMap(({ sets }) => sets.map(({ text }) => text)).join(" ");
  const units = (all.match(/\blbs?\b|pounds?/gi)?.length ?? 0) > (all.match(/kg|kilo/gi)?.length ?? 0) ? "lb" : "kg";
  return { blocks, notUnderstood, units, lines: rows.length };
}
