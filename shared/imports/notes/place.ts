import { circuitOf, type Circuit } from "./circuit";
import { columnsOf } from "./columns";
import type { Head } from "./head";
import { isGreeting, type PartRead } from "./parts";
import type { Row } from "./rows";
import { isPartOrHead, isSetsRow, type Seen } from "./seen";
import { kindOfLine } from "./sheet";

/** What a row is where it stands: the title, a heading, an exercise, or still of the warm-up. */

export interface Place {
  readonly rows: readonly Seen[];
  readonly at: number;
  readonly numbersAreHeads: boolean;
  /** Below a label that stood alone. */
  readonly isUnderLabel: boolean;
  readonly circuit: Circuit | null;
  /** How the row was marked that opened the block. */
  readonly openedBy: Row["level"];
  /** A row after an empty line has come since the part was opened. */
  readonly isPastParagraph: boolean;
  readonly inExercise: boolean;
  /** In a warm-up or a cool-down. */
  readonly inEasyPart: boolean;
  /** The open block has set lines. */
  readonly hasSets: boolean;
}

/** Names a stretch of the session, no exercise: held for the block below it. */
const SECTION = new RegExp(String.raw`^(?:${[
  String.raw`(?:the )?(?:main|strength|power|accessor(?:y|ies)|assistance|conditioning|finishers?|metcon|circuit|super-?sets?|tri-?sets?|giant sets?|block|part|section|round|day|week|session|phase)`,
  String.raw`upper(?: body)?|lower(?: body)?|full body|push|pull|legs?|arms?|core|abs|workout|training|lifts?|exercises?|programme?|plan|work|equipment|kit`,
].join("|")})\b`, "i");
/** Of those, what is never the name of an episode. */
const STRETCH = /^(?:main|strength|conditioning|accessor|circuit|super-?set|block|part|section|round|phase)\b/i;

const isCircuitOrTable = ({ row }: Seen): boolean => circuitOf(row) !== null || columnsOf(row) !== null;

/** The title in the first row: it names the episode when nothing else can be made of it and something begins below it. */
export function titleIn([first, next]: readonly Seen[]): string | null {
  if (first === undefined || next === undefined) return null;
  const { row, head, part, isLabelled, isSets } = first;
  const isBareName = head === null || head.name !== "known" || /\b(?:day|session|workout|training|episode|ep|week)\b/i.test(row.text) || (head.isBare && isPartOrHead(next) && next.part?.behind === "");
  if (part !== null || isLabelled || isSets || !isBareName || head?.sets || isSetsRow(next)) return null;
  const isMarked = row.marks.some((mark) => mark.startsWith("#"));
  const isShort = row.text.length <= 70 && row.words.length <= 10 && (row.level === "none" || isMarked);
  if (!isShort || STRETCH.test(row.text) || isGreeting(row.words) || isCircuitOrTable(first) || /[a-z][.,]\s|[.,]$|\d\s*[x×]\s*\d/i.test(row.text)) return null;
  return isMarked || next.row.apart || isPartOrHead(next) || isCircuitOrTable(next) ? row.text.replace(/[\s*:_]+$/, "") : null;
}

/** "Block A", "Main lifts:", "STRENGTH": said of what begins below. */
export function isHeading({ row, head }: Seen, next: Seen | undefined): boolean {
  const isTitled = SECTION.test(row.text) || row.text.endsWith(":") || row.apart || (row.text === row.text.toUpperCase() && /\p{L}{3}/u.test(row.text));
  if (next === undefined || !isTitled || row.words.length > 6 || row.level === "bullet" || (head !== null && head.name !== "unknown")) return false;
  const isBegun = next.head !== null && (next.head.sets !== null || (next.head.name === "known" && next.head.isBare));
  return isBegun || isCircuitOrTable(next);
}

/** The circuit a row announces, where it stands. */
export function circuitAt({ row, head }: Seen, { rows, at, inEasyPart }: Place): Circuit | null {
  const isNamed = head?.name === "known" && head.exercise !== null;
  // Right below "Warm-up" it tells how often the warm-up is done.
  const isOfPart = inEasyPart && !row.apart && rows[at - 1]?.part?.behind === "";
  return isNamed || isOfPart ? null : circuitOf(row);
}

/** What the name of a part is within an exercise: "warm up 2x10" is light sets, and "start: feet wide" or "end: squeeze" a line. */
export function partWithin({ apart, level }: Row, part: PartRead): "part" | "ramp-up" | "line" {
  if (apart || level === "number" || part.behind === "") return "part";
  if (part.kind === "warm-up" && /\d\s*[x×@]|[x×@]\s*\d/.test(part.behind)) return "ramp-up";
  return /^(?:start|end(?:ing)?|hook|prep|activation|stretch|general|notes?)$/i.test(part.title) ? "line" : "part";
}

/** Do numbers count exercises, so that a numbered row is one whatever it is called? */
export function numbersAreHeads(rows: readonly Seen[]): boolean {
  const numbered = rows.filter(({ row }) => row.level === "number");
  const heads = numbered.filter(({ head, part }) => part !== null || (head !== null && (head.sets !== null || (head.name === "known" && (head.isBare || head.told.length > 0)))));
  return heads.length >= numbered.length / 2;
}

/** Sets on the next row, or further down before another exercise or an empty line. */
function setsBelow({ rows, at }: Place): "next" | "later" | "none" {
  for (let below = at + 1; below <= at + 4; below += 1) {
    const next = rows[below];
    if (next === undefined || next.row.apart || next.part !== null || next.head?.sets || (below > at + 1 && next.head?.name === "known")) return "none";
    if (isSetsRow(next)) return below === at + 1 ? "next" : "later";
  }
  return "none";
}

const isEasy = ({ exercise }: Head): boolean => exercise !== null && (exercise.family === "mobility-warmup" || exercise.family === "cooldown-stretch");

/** Does a row below "Warm-up" still belong to it? */
function staysEasy(row: Row, head: Head, place: Place): boolean {
  const { rows, at, openedBy } = place;
  if (place.circuit !== null) return false;
  if (isEasy(head)) return true;
  if (row.level === "number" && openedBy === "number" && head.sets !== null) return false;
  if (place.isPastParagraph) return head.name !== "known" && head.sets === null && head.told.length === 0 && row.level !== "number";
  const part = rows.slice(at + 1).findIndex((next) => next.part !== null);
  const rest = rows.slice(at + 1, part === -1 ? undefined : at + 1 + part);
  // An empty line further down ends the part; where none comes, only what is plainly work does.
  if (rest.some((next) => next.row.apart && next.head !== null)) return true;
  const line = head.sets?.lines[0] ?? "";
  const isWork = /kg|lb|%|rir|rpe|tempo/i.test(line) || Number.parseInt(line, 10) >= 3;
  const isMarkedAlike = row.level === "bullet" && openedBy !== "bullet";
  return isMarkedAlike || !(isWork || (head.name === "known" && head.sets === null && setsBelow(place) === "next"));
}

const wordsIn = (text: string): number => text.split(" ").filter((word) => word !== "").length;

/** Does the row begin an exercise, where it stands? */
export function beginsExercise(row: Row, head: Head, place: Place): boolean {
  const { circuit, inExercise } = place;
  const isOrdered = row.level === "number";
  const hasSets = head.sets !== null || head.told.length > 0;
  // A list below a numbered exercise, or below one without a mark, tells about it.
  const isBelow = row.level === "bullet" && inExercise && place.openedBy !== "bullet" && !row.apart;
  if (place.isUnderLabel && isBelow && !(head.name === "known" && hasSets)) return false;
  if (place.inEasyPart && staysEasy(row, head, place)) return false;
  if (circuit !== null && !row.apart && head.name !== "unknown" && (head.count !== "" || head.isBare)) return true;
  if (circuit !== null && (head.count !== "" || (head.isBare && circuit.interval !== null && kindOfLine(row.text) === "note"))) return true;
  const below = setsBelow(place);
  if (head.name === "unknown") {
    if (hasSets) return !isBelow;
    const isFresh = !inExercise || place.hasSets;
    return !isBelow && ((isOrdered && place.numbersAreHeads) || (below !== "none" && (row.apart || isOrdered || (isFresh && below === "next"))));
  }
  if (hasSets) return true;
  if (head.name === "likely" && !isOrdered && below === "none") return false;
  if (head.isBare || head.addition !== null) return true;
  if (head.count !== "") return isOrdered || row.apart || row.level === "bullet" || !inExercise;
  return isOrdered || below === "next" || /[:–—-]$/.test(row.words[row.words.length - wordsIn(head.behind) - 1]?.text ?? "");
}
