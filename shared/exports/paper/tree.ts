/**
 * What a document says and how it is set, before any file format: one tree, drawn by the PDF and the DOCX renderer.
 * Sizes are points (1/72 inch). Nothing here knows the page; renderers wrap and break.
 */

export type Weight = "regular" | "semibold" | "bold";

/** A stretch of text in one style. What is left out comes from the node it stands in. */
export interface Run {
  readonly text: string;
  readonly weight?: Weight;
  readonly italic?: boolean;
  readonly size?: number;
  /** Second text: dark grey, still 7:1 on white. */
  readonly grey?: boolean;
}

/** Plain text where one style is enough. */
export type Text = string | readonly Run[];

/** Something to fill in, on screen or by pen. Every `name` is used once in a document. */
export interface Field {
  readonly kind: "field";
  readonly type: "text" | "tick";
  /** Letters, digits, - and _; no full stop (it would make a hierarchy). */
  readonly name: string;
  /** What a screen reader says: "Goblet squat, set 1, reps". */
  readonly tip: string;
  /** Null fills the width there is. */
  readonly width: number | null;
  readonly height: number;
  readonly multiline?: boolean;
}

export interface Heading {
  readonly kind: "heading";
  readonly level: 1 | 2 | 3;
  readonly text: string;
  /** Default 26, 16 and 12.5 by level. */
  readonly size?: number;
}

export interface Paragraph {
  readonly kind: "paragraph";
  readonly text: Text;
  /** Default 11. */
  readonly size?: number;
  readonly weight?: Weight;
  readonly grey?: boolean;
  readonly align?: "left" | "right" | "centre";
  readonly keepWithNext?: boolean;
  /** Space after it; default 4. */
  readonly after?: number;
  /** What it is, as a word processor names its style: "Spoken words". All that share it can be set anew in one place. */
  readonly style?: string;
}

export interface List {
  readonly kind: "list";
  readonly ordered?: boolean;
  readonly items: readonly Text[];
  readonly size?: number;
}

export interface TableColumn {
  /** Share of the width, in any unit: 1 and 3 make a quarter and three. */
  readonly width: number;
  readonly head: string;
  readonly align?: "left" | "right" | "centre";
}

export interface TableRow {
  /** One per column; missing ones are empty. */
  readonly cells: readonly (readonly PaperNode[])[];
  /** No line below it: the next row goes on with the same thing. */
  readonly goesOn?: boolean;
}

/** The head repeats on every page; a row is split only when it is taller than a page. */
export interface Table {
  readonly kind: "table";
  /** What the table is, for screen readers; not printed. */
  readonly summary: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** Column whose cells name their row (TH with row scope), or null. */
  readonly rowHead: number | null;
  readonly size?: number;
  /** Space above and below a cell's content; default 5. */
  readonly padding?: number;
  /** Where cells stand in their row; default "top". */
  readonly valign?: "top" | "middle";
}

/** A dotted place to write in: words, and blanks of so many points. */
export type LogPart = string | { readonly blank: number };

/** One set to film: tick box, big label over a small one, what to do, and lines to log on at the right. */
export interface TickRow {
  readonly kind: "tickRow";
  /** "Set 2" */
  readonly label: string;
  /** "22 kg" */
  readonly under: string;
  /** "A, side", in semibold; empty for none. */
  readonly title: string;
  readonly text: readonly PaperNode[];
  /** Lines of the log at the right: [{blank: 28}, "kg", {blank: 28}, "reps"]. */
  readonly log: readonly (readonly LogPart[])[];
  /** Makes the tick box fillable on screen as well. */
  readonly field?: { readonly name: string; readonly tip: string };
}

export interface Box {
  readonly kind: "box";
  /** A thin line all round, or one thick bar at the left. */
  readonly edge: "outline" | "bar";
  readonly children: readonly PaperNode[];
}

export interface KeyValues {
  readonly kind: "keyValues";
  readonly pairs: readonly { readonly key: string; readonly value: Text }[];
  /** Width of the keys; default 90. */
  readonly keyWidth?: number;
  readonly size?: number;
}

export interface Rule {
  readonly kind: "rule";
  /** Heavy rules part stations and sets, hair rules part rows. */
  readonly weight: "heavy" | "hair";
}

export interface Spacer {
  readonly kind: "spacer";
  readonly height: number;
}

/** Several fields beside each other; they wrap. */
export interface FieldRow {
  readonly kind: "fieldRow";
  readonly fields: readonly Field[];
}

interface Stroke {
  /** Line width; default 1. */
  readonly width?: number;
  readonly grey?: boolean;
  /** Lengths of dash and gap. */
  readonly dash?: readonly [number, number];
}

/** Vector shapes in the drawing's own box: x to the right, y DOWN from the top left corner. */
export type Shape =
  | ({ readonly shape: "line"; readonly from: readonly [number, number]; readonly to: readonly [number, number] } & Stroke)
  | ({ readonly shape: "polyline"; readonly points: readonly (readonly [number, number])[]; readonly closed?: boolean; readonly fill?: "black" | "light" | "white" } & Stroke)
  | ({ readonly shape: "rect"; readonly x: number; readonly y: number; readonly w: number; readonly h: number; readonly fill?: "black" | "light" | "white" } & Stroke)
  | ({ readonly shape: "circle"; readonly x: number; readonly y: number; readonly r: number; readonly fill?: "black" | "light" | "white" } & Stroke)
  | {
      readonly shape: "text";
      /** Anchor point; y is the baseline. */
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly anchor?: "start" | "middle" | "end";
      readonly weight?: Weight;
      readonly white?: boolean;
    };

/** A picture made of lines. It is scaled to the width there is, never enlarged. */
export interface Drawing {
  readonly kind: "drawing";
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** What it shows, in a sentence. */
  readonly alt: string;
  /** A thin frame round the box. */
  readonly frame?: boolean;
}

/** Two or three columns side by side; kept on one page when they fit on one. */
export interface Columns {
  readonly kind: "columns";
  readonly columns: readonly { readonly width: number; readonly children: readonly PaperNode[] }[];
  /** Default 18. */
  readonly gap?: number;
}

export interface PageBreak {
  readonly kind: "pageBreak";
}

/** Moves to the next page as a whole when it does not fit and a page is tall enough for it. */
export interface KeepTogether {
  readonly kind: "keepTogether";
  readonly children: readonly PaperNode[];
}

export type PaperNode =
  | Heading | Paragraph | List | Table | TickRow | Box | KeyValues | Rule | Spacer | Field | FieldRow | Drawing | Columns | PageBreak | KeepTogether;

export interface RunningHead {
  readonly left: string;
  readonly right: string;
}

/** A part of the document with its own running head. */
export interface Section {
  /** Begins on a new page (the first always does). */
  readonly startsPage: boolean;
  /** Above a heavy rule on each of its pages; null for none. */
  readonly head: RunningHead | null;
  readonly children: readonly PaperNode[];
}

export interface Paper {
  readonly title: string;
  readonly author: string;
  /** One line on what the document is. */
  readonly subject: string;
  readonly language: "en-GB";
  readonly sections: readonly Section[];
  /** Four small pages on every sheet, for a PDF that is folded twice. Fields have no place on one. */
  readonly folded?: true;
  /** At the left of every page's foot (it wraps); page numbers, "1 / 8", stand at the right. */
  readonly foot: string;
}

/** Space between two columns of a table; points. */
export const GUTTER = 9;

/** Sizes used where a node names none, shared so that both renderers agree. */
export const SIZES = { body: 11, small: 9, head: 9, foot: 9, headings: { 1: 26, 2: 16, 3: 12.5 } } as const;

export const heading = (level: 1 | 2 | 3, text: string, more: Partial<Heading> = {}): Heading => ({ kind: "heading", level, text, ...more });
export const paragraph = (text: Text, more: Partial<Paragraph> = {}): Paragraph => ({ kind: "paragraph", text, ...more });
/** Small grey words above something. */
export const label = (text: string): Paragraph => paragraph(text, { size: SIZES.small, grey: true, keepWithNext: true, after: 0 });
export const list = (items: readonly Text[], more: Partial<List> = {}): List => ({ kind: "list", items, ...more });
export const table = (fields: Omit<Table, "kind">): Table => ({ kind: "table", ...fields });
export const tickRow = (fields: Omit<TickRow, "kind">): TickRow => ({ kind: "tickRow", ...fields });
export const box = (edge: Box["edge"], children: readonly PaperNode[]): Box => ({ kind: "box", edge, children });
export const keyValues = (pairs: KeyValues["pairs"], more: Partial<KeyValues> = {}): KeyValues => ({ kind: "keyValues", pairs, ...more });
export const rule = (weight: Rule["weight"] = "hair"): Rule => ({ kind: "rule", weight });
export const spacer = (height: number): Spacer => ({ kind: "spacer", height });
export const field = (fields: Omit<Field, "kind">): Field => ({ kind: "field", ...fields });
export const fieldRow = (fields: readonly Field[]): FieldRow => ({ kind: "fieldRow", fields });
export const drawing = (fields: Omit<Drawing, "kind">): Drawing => ({ kind: "drawing", ...fields });
export const columns = (parts: Columns["columns"], gap?: number): Columns => ({ kind: "columns", columns: parts, ...(gap === undefined ? {} : { gap }) });
export const pageBreak = (): PageBreak => ({ kind: "pageBreak" });
export const keepTogether = (children: readonly PaperNode[]): KeepTogether => ({ kind: "keepTogether", children });

/** The runs of a text. */
export const runsOf = (text: Text): readonly Run[] => (typeof text === "string" ? [{ text }] : text);
/** The words of a text without their style. */
export const plain = (text: Text): string => (typeof text === "string" ? text : text.map((run) => run.text).join(""));
