import { circuitOf } from "./circuit";
import { headOf, type Head } from "./head";
import { labelOf, rampOf } from "./labels";
import { partOf, type PartRead } from "./parts";
import { weekOf, type Row } from "./rows";
import { isSetLine, writtenIn } from "./written";

/** One row with all it may be, before its place is looked at. */
export interface Seen {
  readonly row: Row;
  readonly head: Head | null;
  readonly part: PartRead | null;
  readonly isLabelled: boolean;
  /** Sets and nothing else. */
  readonly isSets: boolean;
}

const EARLIER = /^(?:last (?:week|time|session|month)|previous(?:ly)?|prev|pb|pr|e?1rm|best)\b/i;
const FIELD = /^(?:sets|reps|rounds|load|weight|rest|tempo|rir|rpe|time|distance)\s*[:=-]?\s*(?:[\d@]|amrap|max)/i;

/** "Last week 3x8 @ 55 kg" is no plan. */
export const isEarlier = (text: string): boolean => EARLIER.test(text);

/** A figure with its name, on a row of its own. */
export const isField = (text: string): boolean => FIELD.test(text);

/** All that a row may be by itself. */
export function seen(row: Row, unit: "kg" | "lb"): Seen {
  const label = labelOf(row.text);
  const part = label === null || label.behind === "" ? partOf(row.text) : null;
  const sets = circuitOf(row) === null ? writtenIn(row.words, unit) : null;
  const isSets = sets !== null ? sets.from === 0 && sets.to === row.words.length : circuitOf(row) === null && isSetLine(row.text);
  const isNoHead = label !== null || part !== null || isSets || isEarlier(row.text) || weekOf(row) !== null || rampOf(row.text) !== null || row.words.length === 0;
  return { row, head: isNoHead ? null : headOf(row, unit), part, isLabelled: label !== null, isSets };
}

/** A part of the episode, or an exercise by its name or its sets. */
export const isPartOrHead = (one: Seen | undefined): boolean => one !== undefined && (one.part !== null || (one.head !== null && (one.head.sets !== null || one.head.name === "known")));

/** Sets and nothing else, with a label or without. */
export const isSetsRow = (one: Seen | undefined): boolean => one !== undefined && (one.isSets || (one.isLabelled && labelOf(one.row.text)?.kind === "sets"));
