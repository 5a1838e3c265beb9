import {
  CheckBox, Paragraph, StringValueElement, Table, TableCell, TableLayoutType, TableRow, TextRun, WidthType, XmlComponent,
  type IBorderOptions, type IParagraphOptions, type IParagraphStyleOptions, type ITableCellBorders,
} from "docx";
import { BLACK, GREY, TICK_FACE, eighths, halfPoints, twips } from "./docx-units";
import { runsOf, type Text, type Weight } from "./tree";

export type DocxBlock = Paragraph | Table;

/** Names of list definitions and styles the document declares. */
export const LISTS = { bullet: "bullets", number: "numbers" } as const;
export const TICK_STYLE = "Tick";
export const SMALL_TICK_STYLE = "SmallTick";

/** How a node is set: the room it has, and what it must stay on one page with. */
export interface Setting {
  /** Points. */
  readonly width: number;
  /** Size where a node names none. */
  readonly size: number;
  readonly align: "left" | "right" | "centre";
  readonly weight: Weight;
  /** Its end stays with what follows. */
  readonly keep: boolean;
  /** It is not broken inside. */
  readonly whole: boolean;
  /** Counts ordered lists, so that each starts at 1. */
  readonly lists: { count: number };
  /** Named styles the document has so far, each with the look of its first paragraph. */
  readonly styles: Map<string, Look>;
}

/** How the words of a node are set, and the space after it. */
export interface Look {
  readonly size: number;
  readonly weight: Weight;
  readonly grey: boolean;
  readonly align: Setting["align"];
  readonly after: number;
}

/** ☐ and ☒ as a box to press in Word and to tick by pen on paper (w14:checkbox). */
const tick = (tip: string): CheckBox =>
  new CheckBox({ alias: tip, checked: false, checkedState: { value: "2612", font: TICK_FACE }, uncheckedState: { value: "2610", font: TICK_FACE } });

/** A tick box alone in its paragraph. */
export const tickParagraph = (tip: string, small: boolean, keepNext: boolean): Paragraph =>
  new Paragraph({ style: small ? SMALL_TICK_STYLE : TICK_STYLE, children: [tick(tip)], keepNext });

export const line = (weight: number, color: string = BLACK): IBorderOptions => ({ style: "single", size: eighths(weight), color, space: 0 });
const NONE: IBorderOptions = { style: "none", size: 0, color: "auto" };
const NO_BORDERS = { top: NONE, bottom: NONE, left: NONE, right: NONE, insideHorizontal: NONE, insideVertical: NONE } as const;
const ALIGN = { left: "left", right: "right", centre: "center" } as const;

/** The name of a semibold face is not known everywhere; bold is. */
const isBold = (weight: Weight): boolean => weight !== "regular";

/** Runs in the style of the node they stand in. */
export function textRuns(text: Text, base: { size: number; weight: Weight; grey: boolean }): TextRun[] {
  return runsOf(text).map((run) => new TextRun({
    text: run.text,
    size: halfPoints(run.size ?? base.size),
    bold: isBold(run.weight ?? base.weight),
    italics: run.italic ?? false,
    ...(run.grey ?? base.grey ? { color: GREY } : {}),
  }));
}

/** Runs that say only what their paragraph's named style does not. */
function styledRuns(text: Text, base: { size: number; weight: Weight; grey: boolean }, look: Look): TextRun[] {
  return runsOf(text).map((run) => {
    const [size, bold, grey] = [run.size ?? base.size, isBold(run.weight ?? base.weight), run.grey ?? base.grey];
    return new TextRun({
      text: run.text,
      ...(size === look.size ? {} : { size: halfPoints(size) }),
      ...(bold === isBold(look.weight) ? {} : { bold }),
      ...(run.italic ? { italics: true } : {}),
      ...(grey === look.grey ? {} : { color: grey ? GREY : BLACK }),
    });
  });
}

/** A paragraph of fixed small height: keeps two tables apart (Word would join them) and closes a cell that ends in one. */
export const sliver = (setting: Setting, height = 1, more: Partial<IParagraphOptions> = {}): Paragraph =>
  new Paragraph({ spacing: { before: 0, after: 0, line: twips(height), lineRule: "exact" }, keepNext: setting.keep || setting.whole, run: { size: 2 }, ...more });

export interface Cell {
  readonly blocks: readonly DocxBlock[];
  readonly borders?: ITableCellBorders;
  /** Points inside the cell's edges. */
  readonly pad?: { readonly top?: number; readonly right?: number; readonly bottom?: number; readonly left?: number };
  readonly shade?: string;
}

export interface Row {
  readonly cells: readonly Cell[];
  readonly head?: boolean;
  /** Cells stand in the middle of the row. */
  readonly middle?: boolean;
  readonly minHeight?: number;
}

/** A table with a description for screen readers, the last of its properties (w:tblDescription, ECMA-376 part 1 clause 17.4.46). */
class DescribedTable extends Table {
  constructor(summary: string, options: ConstructorParameters<typeof Table>[0]) {
    super(options);
    const properties: unknown = this.root[0];
    if (summary !== "" && properties instanceof XmlComponent) properties.addChildElement(new StringValueElement("w:tblDescription", summary));
  }
}

/** A table of fixed layout; widths are given for the grid and again for every cell, as readers differ in which they obey. */
export function grid(widths: readonly number[], rows: readonly Row[], setting: Setting, firstColumn = false, summary = ""): Table {
  return new DescribedTable(summary, {
    layout: TableLayoutType.FIXED,
    width: { size: twips(widths.reduce((sum, width) => sum + width, 0)), type: WidthType.DXA },
    columnWidths: widths.map(twips),
    borders: NO_BORDERS,
    tableLook: { firstRow: rows[0]?.head ?? false, firstColumn, lastRow: false, lastColumn: false, noHBand: true, noVBand: true },
    rows: rows.map((row, at) => new TableRow({
      cantSplit: true,
      // Said only where it is so: some readers take the element's presence for yes.
      ...(row.head ? { tableHeader: true } : {}),
      keepNext: row.head || (setting.whole && at < rows.length - 1) || (setting.keep && at === rows.length - 1),
      ...(row.minHeight === undefined ? {} : { height: { value: twips(row.minHeight), rule: "atLeast" as const } }),
      children: widths.map((width, column) => {
        const cell = row.cells[column];
        return new TableCell({
          width: { size: twips(width), type: WidthType.DXA },
          ...(row.middle ? { verticalAlign: "center" as const } : {}),
          margins: { marginUnitType: WidthType.DXA, top: twips(cell?.pad?.top ?? 0), right: twips(cell?.pad?.right ?? 0), bottom: twips(cell?.pad?.bottom ?? 0), left: twips(cell?.pad?.left ?? 0) },
          ...(cell?.borders ? { borders: cell.borders } : {}),
          ...(cell?.shade ? { shading: { fill: cell.shade } } : {}),
          children: closed(cell?.blocks ?? [], setting),
        });
      }),
    })),
  });
}

/** A cell must end in a paragraph (w:tc, ECMA-376 part 1 clause 17.4.65). */
function closed(blocks: readonly DocxBlock[], setting: Setting): DocxBlock[] {
  const last = blocks[blocks.length - 1];
  return last instanceof Paragraph ? [...blocks] : [...blocks, sliver({ ...setting, keep: false, whole: false })];
}

/** One paragraph of text in the setting's own style. */
export function text(words: Text, setting: Setting, after = 4, grey = false): Paragraph {
  return new Paragraph({
    children: textRuns(words, { size: setting.size, weight: setting.weight, grey }),
    alignment: ALIGN[setting.align],
    spacing: { before: 0, after: twips(after) },
    keepLines: true,
    keepNext: setting.keep,
  });
}

const styleId = (name: string): string => name.replace(/[^A-Za-z0-9]+/g, "");

/** A paragraph in a named style: the first of its name says how the style looks, the others only where they differ. */
export function styledText(name: string, words: Text, setting: Setting, after: number, grey: boolean): Paragraph {
  const { size, weight, align } = setting;
  const look = setting.styles.get(name) ?? { size, weight, grey, align, after };
  setting.styles.set(name, look);
  return new Paragraph({
    style: styleId(name),
    children: styledRuns(words, { size, weight, grey }, look),
    ...(align === look.align ? {} : { alignment: ALIGN[align] }),
    ...(after === look.after ? {} : { spacing: { before: 0, after: twips(after) } }),
    ...(setting.keep ? { keepNext: true } : {}),
  });
}

/** Named styles as the document declares them. */
export const declared = (styles: ReadonlyMap<string, Look>): IParagraphStyleOptions[] =>
  Array.from(styles, ([name, look]) => ({
    id: styleId(name), name, basedOn: "Normal", quickFormat: true,
    run: { size: halfPoints(look.size), bold: isBold(look.weight), color: look.grey ? GREY : BLACK },
    paragraph: { spacing: { before: 0, after: twips(look.after) }, keepLines: true, alignment: ALIGN[look.align] },
  }));
