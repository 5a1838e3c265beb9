import { AlignmentType, Document, Footer, Header, LevelFormat, Packer, PageNumber, Paragraph, SectionType, Table, TableCell, TableLayoutType, TableRow, TextRun, WidthType, type IBorderOptions, type ISectionOptions } from "docx";
import type { PaperSize, Rendered } from "../types";
import { nodesToBlocks } from "./docx-blocks";
import { settle } from "./docx-pack";
import { LISTS, SMALL_TICK_STYLE, TICK_STYLE, declared, type Setting } from "./docx-pieces";
import { BLACK, FACE, MARGINS, SHEETS, eighths, halfPoints, twips } from "./docx-units";
import { SIZES, type Paper, type RunningHead, type Section } from "./tree";

export interface DocxOptions {
  readonly paper: PaperSize;
  /** ISO date written as the file's date. */
  readonly date: string;
}

/** What every DOCX of ours lacks. */
export const DOCX_NOTES: readonly string[] = [
  `The Word file names the typeface ${FACE} but does not carry it: where it is not installed, another sans-serif stands in and lines may break elsewhere. The PDF carries its own.`,
];

const NONE: IBorderOptions = { style: "none", size: 0, color: "auto" };

/** Words left and right on one line that may wrap, with a rule below (head) or above (foot). */
function running(width: number, left: Paragraph, right: Paragraph, rightShare: number, edge: "top" | "bottom", weight: number): Table {
  const widths = [width * (1 - rightShare), width * rightShare] as const;
  const rule: IBorderOptions = { style: "single", size: eighths(weight), color: BLACK, space: 0 };
  return new Table({
    layout: TableLayoutType.FIXED,
    width: { size: twips(width), type: WidthType.DXA },
    columnWidths: widths.map(twips),
    borders: { top: NONE, bottom: NONE, left: NONE, right: NONE, insideHorizontal: NONE, insideVertical: NONE },
    rows: [new TableRow({
      cantSplit: true,
      children: [left, right].map((words, at) => new TableCell({
        width: { size: twips(widths[at] ?? 0), type: WidthType.DXA },
        margins: { marginUnitType: WidthType.DXA, top: edge === "top" ? 90 : 0, bottom: edge === "bottom" ? 90 : 0, left: 0, right: at === 0 ? 160 : 0 },
        borders: { [edge]: rule },
        verticalAlign: edge === "bottom" ? "bottom" : "top",
        children: [words],
      })),
    })],
  });
}

const small = (text: string, size: number, right = false): Paragraph =>
  new Paragraph({ alignment: right ? AlignmentType.RIGHT : AlignmentType.LEFT, spacing: { before: 0, after: 0 }, children: [new TextRun({ text, size: halfPoints(size) })] });

/** A running part must end in a paragraph. */
const end = (): Paragraph => new Paragraph({ spacing: { before: 0, after: 0, line: 20, lineRule: "exact" }, run: { size: 2 } });

/** The right side's share of a running head: as its words ask, within bounds, so that neither side wraps before it must. */
const shareOf = ({ left, right }: RunningHead): number => Math.min(0.62, Math.max(0.2, (right.length + 2) / (left.length + right.length + 4)));

function header(head: RunningHead | null, width: number): Header {
  return new Header({ children: head ? [running(width, small(head.left, SIZES.small + 1), small(head.right, SIZES.small + 1, true), shareOf(head), "bottom", 1.5), end()] : [end()] });
}

/** The page number is a field: it stays right when the document is edited. */
function footer(foot: string, width: number): Footer {
  const number = new Paragraph({
    alignment: AlignmentType.RIGHT,
    spacing: { before: 0, after: 0 },
    children: [new TextRun({ children: [PageNumber.CURRENT, " / ", PageNumber.TOTAL_PAGES], size: halfPoints(SIZES.foot), bold: true })],
  });
  return new Footer({ children: [running(width, small(foot, SIZES.foot), number, 0.16, "top", 0.75), end()] });
}

function section(part: Section, first: boolean, foot: string, paper: PaperSize, setting: Setting): ISectionOptions {
  const sheet = SHEETS[paper];
  const blocks = nodesToBlocks(part.children, setting);
  return {
    properties: {
      type: first || part.startsPage ? SectionType.NEXT_PAGE : SectionType.CONTINUOUS,
      page: {
        size: { width: twips(sheet.width), height: twips(sheet.height) },
        margin: { top: twips(part.head ? MARGINS.topUnderHead : MARGINS.top), bottom: twips(MARGINS.bottom), left: twips(MARGINS.side), right: twips(MARGINS.side), header: twips(MARGINS.head), footer: twips(MARGINS.foot) },
      },
    },
    headers: { default: header(part.head, setting.width) },
    footers: { default: footer(foot, setting.width) },
    children: blocks.length > 0 ? blocks : [end()],
  };
}

const headingStyle = (level: 1 | 2 | 3, before: number, after: number) => ({
  run: { size: halfPoints(SIZES.headings[level]), bold: true, color: BLACK, font: FACE },
  // Without an outline level a reader sees a styled paragraph, not a heading.
  paragraph: { outlineLevel: level - 1, spacing: { before: twips(before), after: twips(after) }, keepNext: true },
});

const tickStyle = (id: string, name: string, size: number) => ({
  id, name, basedOn: "Normal",
  run: { size: halfPoints(size), bold: true },
  paragraph: { spacing: { before: 0, after: 0, line: twips(size + 2), lineRule: "exact" as const } },
});

/**
 * The tree as a Word document (Office Open XML, ECMA-376): real headings, lists and tables, head and foot of each section,
 * vector drawings, tick boxes that can be pressed. Same tree, same bytes.
 *
 * It drops the typeface files and, where a node asks for semibold, sets bold.
 */
export async function renderDocx(paper: Paper, options: DocxOptions): Promise<Rendered> {
  const width = SHEETS[options.paper].width - 2 * MARGINS.side;
  const setting: Setting = { width, size: SIZES.body, align: "left", weight: "regular", keep: false, whole: false, lists: { count: 0 }, styles: new Map() };
  const sections: readonly Section[] = paper.sections.length > 0 ? paper.sections : [{ startsPage: true, head: null, children: [] }];
  // Made first: they say which styles the document has.
  const made = sections.map((part, at) => section(part, at === 0, paper.foot, options.paper, setting));
  const document = new Document({
    title: paper.title,
    creator: paper.author,
    lastModifiedBy: paper.author,
    description: paper.subject,
    subject: paper.subject,
    styles: {
      default: {
        document: { run: { font: FACE, size: halfPoints(SIZES.body), color: BLACK, language: { value: paper.language } }, paragraph: { spacing: { line: 247, lineRule: "auto" } } },
        heading1: headingStyle(1, 0, 2),
        heading2: headingStyle(2, 10, 4),
        heading3: headingStyle(3, 8, 2),
      },
      paragraphStyles: [tickStyle(TICK_STYLE, "Tick box", 24), tickStyle(SMALL_TICK_STYLE, "Small tick box", 15), ...declared(setting.styles)],
    },
    numbering: {
      config: [
        { reference: LISTS.bullet, levels: [{ level: 0, format: LevelFormat.BULLET, text: "•", alignment: AlignmentType.LEFT, style: { paragraph: { indent: { left: 260, hanging: 260 } } } }] },
        { reference: LISTS.number, levels: [{ level: 0, format: LevelFormat.DECIMAL, text: "%1.", alignment: AlignmentType.LEFT, style: { paragraph: { indent: { left: 380, hanging: 380 } } } }] },
      ],
    },
    sections: made,
  });
  const packed = new Uint8Array(await Packer.toArrayBuffer(document));
  return { bytes: settle(packed, options.date), notes: DOCX_NOTES };
}
