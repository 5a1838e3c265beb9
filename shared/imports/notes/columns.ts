import { textIn } from "../source/words";
import type { Word } from "../types";
import { headOf, type Head } from "./head";
import type { Row } from "./rows";
import { isSetLine } from "./written";

/** A table: a row of headings, and rows with a name and a figure for each. Tabs and bars are blanks by now. */

const FIELDS: readonly (readonly [heading: RegExp, field: string])[] = [
  [/^sets?$/, "sets"], [/^(?:reps?|repetitions|work|time)$/, "reps"], [/^(?:load|weight|kgs?|lbs?)$/, "load"],
  [/^tempo$/, "tempo"], [/^(?:rest|recovery)$/, "rest"], [/^rir$/, "RIR"], [/^rpe$/, "RPE"], [/^(?:notes?|cues?|comments?)$/, "notes"],
];
const NAMES = /^(?:exercises?|movements?|lifts?|name|what)$/;
const WEEK = /^(?:w|wk|week)?\d{1,2}$/;

/** What the columns behind the name hold; "week" where each is a week of its own. Null for a row that heads no table. */
export function columnsOf({ words }: Row): readonly string[] | null {
  const plain = words.map((word) => word.plain).filter((each) => each !== "");
  if (!NAMES.test(plain[0] ?? "") || plain.length < 3) return null;
  const weeks = plain.slice(1).filter((each) => !/^(?:wk|week)$/.test(each));
  if (weeks.every((each) => WEEK.test(each)) && plain.length > weeks.length - 1) return weeks.map(() => "week");
  // "Sets x reps" is one column, and what stands in it reads by itself.
  if (plain.some((each) => each === "x" || each === "×") && plain.slice(1).every((each) => /^[x×]$/.test(each) || FIELDS.some(([heading]) => heading.test(each)))) return [];
  const fields = plain.slice(1).map((each) => FIELDS.find(([heading]) => heading.test(each))?.[1] ?? "");
  // "Load (kg)" is one column.
  const known = fields.filter((field, at) => field !== "" && !(field === "load" && fields[at - 1] === "load"));
  return known.length >= 2 && fields.every((field) => field !== "") ? known : null;
}

const UNIT = /^(?:kgs?|lbs?|s|secs?|mins?|m|each|per|side|leg|arm|hand|reps?|sets?|\/|\([a-z]+\))$/i;

function cellsOf(words: readonly Word[]): string[] {
  if (words.some(({ text }) => text === "|")) return textIn(words, 0, words.length).split("|").map((cell) => cell.trim()).filter((cell, at) => at > 0 || cell !== "");
  const cells: string[] = [];
  for (const { text } of words) {
    if (UNIT.test(text) && cells.length > 0) cells[cells.length - 1] += ` ${text}`;
    else cells.push(text);
  }
  return cells;
}

export interface TableRow {
  readonly head: Head;
  readonly line: string;
  /** What the last column says in words. */
  readonly notes: string;
}

/** A row of the table; null where it names nothing, or its figures do not fill the columns. */
export function inColumns(row: Row, columns: readonly string[], unit: "kg" | "lb"): TableRow | null {
  const { words } = row;
  const from = words.findIndex(({ text }, at) => at > 0 && (text === "|" || /^\d/.test(text)));
  if (from < 1) return null;
  const cells = cellsOf(words.slice(from));
  const asked = columns.filter((column) => column !== "notes");
  const cell = (field: string): string => {
    const text = cells[asked.indexOf(field)] ?? "";
    return asked.includes(field) && /[\p{L}\d]/u.test(text) ? text : "";
  };
  const load = cell("load");
  const rest = cell("rest");
  const fields = [
    `${cell("sets")} x ${cell("reps")}${load === "" ? "" : ` @ ${load}${/^[\d.]+$/.test(load) ? ` ${unit}` : ""}`}`,
    ...["tempo", "RIR", "RPE"].map((field) => (cell(field) === "" ? "" : `${field} ${cell(field)}`)),
    rest === "" ? "" : `rest ${rest}`,
  ];
  const line = fields.filter((field) => field !== "").join(", ");
  const head = isSetLine(line) ? headOf({ ...row, words: words.slice(0, from) }, unit) : null;
  return head && { head, line, notes: cells.slice(asked.length).join(" ").trim() };
}
