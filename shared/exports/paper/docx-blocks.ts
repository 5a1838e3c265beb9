import { HeadingLevel, Paragraph, Table, TextRun, type ITableCellBorders, type ParagraphChild } from "docx";
import { drawingRun } from "./docx-drawing";
import { LISTS, grid, line, sliver, styledText, text, textRuns, tickParagraph, type Cell, type DocxBlock, type Row, type Setting } from "./docx-pieces";
import { GREY, PALE, halfPoints, twips } from "./docx-units";
import { GUTTER, SIZES, plain, type Field, type LogPart, type PaperNode, type TableColumn, type TickRow } from "./tree";

/** Cells of one row set their own paragraphs; whether rows keep together is the row's business. */
const inCell = (setting: Setting, width: number, more: Partial<Setting> = {}): Setting => ({ ...setting, width, keep: false, whole: false, ...more });

/** The nodes of a cell: the space after its last paragraph is the cell's own padding. */
function cellBlocks(nodes: readonly PaperNode[], setting: Setting): DocxBlock[] {
  const last = nodes[nodes.length - 1];
  return nodesToBlocks(last?.kind === "paragraph" && last.after === undefined ? [...nodes.slice(0, -1), { ...last, after: 0 }] : nodes, setting);
}

const share = (columns: readonly { readonly width: number }[], width: number): number[] => {
  const total = columns.reduce((sum, column) => sum + column.width, 0) || 1;
  return columns.map((column) => (column.width / total) * width);
};

function tableOf(node: Extract<PaperNode, { kind: "table" }>, setting: Setting): Table {
  // A gap is the right padding of the cell before it, so that a column has the room it has in the PDF.
  const gapAt = (column: number): number => (column === node.columns.length - 1 ? 0 : GUTTER);
  const widths = share(node.columns, setting.width - GUTTER * (node.columns.length - 1)).map((width, at) => width + gapAt(at));
  const size = node.size ?? setting.size;
  const padding = node.padding ?? 5;
  const pad = (column: number) => ({ top: padding, bottom: padding, right: gapAt(column) });
  const head: Row = {
    head: true,
    cells: node.columns.map((column, at) => ({
      blocks: [text(column.head, { ...inCell(setting, widths[at] ?? 0), size: SIZES.head, align: column.align ?? "left", weight: "semibold" }, 0)],
      borders: { bottom: line(1.25) },
      pad: pad(at),
    })),
  };
  const rows = node.rows.map((row): Row => ({
    middle: node.valign === "middle",
    cells: widths.map((width, at) => ({
      blocks: cellBlocks(row.cells[at] ?? [], inCell(setting, width - gapAt(at), { size, align: node.columns[at]?.align ?? "left" })),
      ...(row.goesOn ? {} : { borders: { bottom: line(0.5, PALE) } }),
      pad: pad(at),
    })),
  }));
  const headed = node.columns.some((column: TableColumn) => column.head !== "");
  return grid(widths, headed ? [head, ...rows] : rows, setting, node.rowHead === 0, node.summary);
}

/** Points a no-break space takes at the size blanks are set in, and a letter at the size of the words between them. */
const BLANK_SPACE = { size: 13, width: 3.4 } as const;
const LOG_LETTER = 5;

const spaces = (blank: number): number => Math.max(3, Math.round(blank / BLANK_SPACE.width));
const logWidth = (parts: readonly LogPart[]): number =>
  4 + parts.reduce((sum, part) => sum + (typeof part === "string" ? part.length * LOG_LETTER : spaces(part.blank) * BLANK_SPACE.width) + 3, 0);

/** A blank to write on is a row of no-break spaces with a line under them; the whole never wraps. */
function logRuns(parts: readonly LogPart[]): TextRun[] {
  return parts.flatMap((part, at) => {
    const gap = at === 0 ? "" : "\u00a0";
    if (typeof part === "string") return [new TextRun({ text: gap + part, size: halfPoints(SIZES.small), color: GREY })];
    return [
      new TextRun({ text: gap, size: halfPoints(SIZES.small) }),
      new TextRun({ text: "\u00a0".repeat(spaces(part.blank)), size: halfPoints(BLANK_SPACE.size), underline: { type: "single" } }),
    ];
  });
}

/** Tick rows in a row make one table, a heavy rule above each. */
function tickTable(rows: readonly TickRow[], setting: Setting): Table {
  const log = Math.max(0, ...rows.flatMap((row) => row.log.map(logWidth)));
  const logged = log > 0;
  const [box, name] = [32, 76] as const;
  const words = setting.width - box - name - log;
  const pad = { top: 7, bottom: 7 };
  const over: ITableCellBorders = { top: line(1.5) };
  return grid(
    logged ? [box, name, words, log] : [box, name, words],
    rows.map((row): Row => {
      const inner = inCell(setting, words - 10);
      const cells: Cell[] = [
        { blocks: [tickParagraph(row.field?.tip ?? row.label, false, false)], borders: over, pad: { ...pad, top: 4 } },
        { blocks: [text([{ text: row.label, weight: "bold", size: 15 }], inner, 0), ...(row.under === "" ? [] : [text([{ text: row.under, size: 10 }], inner, 0)])], borders: over, pad: { ...pad, right: 8 } },
        { blocks: [...(row.title === "" ? [] : [text([{ text: row.title, weight: "semibold", size: 13 }], { ...inner, keep: true }, 0)]), ...cellBlocks(row.text, inner)], borders: over, pad: { ...pad, right: 10 } },
        { blocks: row.log.map((parts) => new Paragraph({ children: logRuns(parts), alignment: "right", spacing: { before: 0, after: twips(3) } })), borders: over, pad },
      ];
      return { cells: logged ? cells : cells.slice(0, 3) };
    }),
    // A set's row and the next may be parted; the row itself may not.
    setting,
  );
}

/** A place to write: a bordered cell, or a tick box. */
function fieldBlock(field: Field, setting: Setting): DocxBlock {
  if (field.type === "tick") return tickParagraph(field.tip, field.height < 18, setting.keep);
  const edge = line(0.75, GREY);
  const width = Math.min(setting.width, field.width ?? setting.width);
  return grid([width], [{ cells: [{ blocks: [], borders: { top: edge, bottom: edge, left: edge, right: edge } }], minHeight: field.height }], setting);
}

/** Fields beside each other: bordered cells with gaps between them, as many to a row as fit. */
function fieldRows(fields: readonly Field[], setting: Setting): DocxBlock[] {
  const gap = 6;
  const edge = line(0.75, GREY);
  const lines: Field[][] = [];
  let room = 0;
  for (const field of fields) {
    const width = (field.width ?? 60) + gap;
    if (lines.length === 0 || room < width) {
      lines.push([]);
      room = setting.width + gap;
    }
    lines[lines.length - 1]?.push(field);
    room -= width;
  }
  return lines.map((row) => grid(
    row.flatMap((field) => [field.width ?? 60, gap]),
    [{
      cells: row.flatMap((field): Cell[] => [
        field.type === "tick" ? { blocks: [tickParagraph(field.tip, field.height < 18, false)] } : { blocks: [], borders: { top: edge, bottom: edge, left: edge, right: edge } },
        { blocks: [] },
      ]),
      minHeight: Math.max(...row.map((field) => field.height)),
    }],
    setting,
  ));
}

const HEADINGS = { 1: HeadingLevel.HEADING_1, 2: HeadingLevel.HEADING_2, 3: HeadingLevel.HEADING_3 } as const;

function blocksOf(node: Exclude<PaperNode, TickRow>, setting: Setting): DocxBlock[] {
  switch (node.kind) {
    case "heading":
      return [new Paragraph({ heading: HEADINGS[node.level], keepNext: true, keepLines: true, children: [new TextRun({ text: node.text, ...(node.size === undefined ? {} : { size: halfPoints(node.size) }) })] })];
    case "paragraph": {
      const own: Setting = { ...setting, size: node.size ?? setting.size, weight: node.weight ?? setting.weight, align: node.align ?? setting.align, keep: setting.keep || (node.keepWithNext ?? false) };
      const [after, grey] = [node.after ?? 4, node.grey ?? false];
      return [node.style === undefined ? text(node.text, own, after, grey) : styledText(node.style, node.text, own, after, grey)];
    }
    case "list": {
      if (node.ordered) setting.lists.count += 1;
      const instance = setting.lists.count;
      return node.items.map((item, at) => new Paragraph({
        children: textRuns(item, { size: node.size ?? setting.size, weight: setting.weight, grey: false }),
        numbering: node.ordered ? { reference: LISTS.number, level: 0, instance } : { reference: LISTS.bullet, level: 0 },
        spacing: { before: 0, after: twips(3) },
        keepLines: true,
        keepNext: at < node.items.length - 1 ? setting.whole : setting.keep,
      }));
    }
    case "table":
      return node.rows.length === 0 && node.columns.length === 0 ? [] : [tableOf(node, setting)];
    case "box": {
      const bar = node.edge === "bar";
      const edge = line(1.5);
      const inner = inCell(setting, setting.width - 22);
      return [grid([setting.width], [{ cells: [{ blocks: cellBlocks(node.children, inner), borders: bar ? { left: line(4.5) } : { top: edge, bottom: edge, left: edge, right: edge }, pad: { top: bar ? 2 : 8, bottom: bar ? 2 : 8, left: 11, right: 11 } }] }], setting)];
    }
    case "keyValues": {
      const key = Math.min(node.keyWidth ?? 90, setting.width / 2);
      const size = node.size ?? setting.size;
      return [grid([key, setting.width - key], node.pairs.map((pair): Row => ({
        cells: [
          { blocks: [text(pair.key, inCell(setting, key, { size, weight: "semibold" }), 0)], pad: { top: 2, bottom: 2, right: 8 } },
          { blocks: [text(pair.value, inCell(setting, setting.width - key, { size }), 0)], pad: { top: 2, bottom: 2 } },
        ],
      })), setting, true)];
    }
    case "rule":
      return [sliver(setting, 2, { border: { bottom: node.weight === "heavy" ? line(1.5) : line(0.5, PALE) }, spacing: { before: 0, after: twips(6), line: twips(2), lineRule: "exact" } })];
    case "spacer":
      return [sliver(setting, node.height)];
    case "field":
      return [fieldBlock(node, setting)];
    case "fieldRow":
      return node.fields.length === 0 ? [] : fieldRows(node.fields, setting);
    case "drawing":
      return [new Paragraph({ children: [drawingRun(node, setting.width) as ParagraphChild], spacing: { before: 0, after: 0 }, keepNext: setting.keep })];
    case "columns": {
      const gap = node.gap ?? 18;
      const room = setting.width - gap * (node.columns.length - 1);
      const widths = share(node.columns, room);
      return [grid(widths.map((width, at) => width + (at < widths.length - 1 ? gap : 0)), [{
        cells: node.columns.map((column, at) => ({ blocks: cellBlocks(column.children, inCell(setting, widths[at] ?? room)), pad: { right: at < widths.length - 1 ? gap : 0 } })),
      }], setting)];
    }
    case "pageBreak":
      return [sliver({ ...setting, keep: false, whole: false }, 1, { pageBreakBefore: true })];
    case "keepTogether":
      return nodesToBlocks(node.children, { ...setting, whole: true });
  }
}

/** Nodes that print nothing would leave an empty table or list behind. */
const prints = (node: PaperNode): boolean =>
  node.kind === "columns" ? node.columns.length > 0 : node.kind === "keyValues" ? node.pairs.length > 0 : node.kind === "paragraph" ? plain(node.text) !== "" || (node.after ?? 0) > 0 : true;

/** Paragraphs bring their own space; these need some before what follows. */
const SPACED: ReadonlySet<PaperNode["kind"]> = new Set(["table", "box", "columns", "tickRow"]);

/** Nodes in order, as paragraphs and tables. Tick rows that follow each other share a table; two tables never touch. */
export function nodesToBlocks(nodes: readonly PaperNode[], setting: Setting): DocxBlock[] {
  const shown = nodes.filter(prints);
  const out: DocxBlock[] = [];
  for (let at = 0; at < shown.length; at += 1) {
    const node = shown[at];
    if (!node) continue;
    const ticks: TickRow[] = [];
    for (let next = shown[at]; next?.kind === "tickRow"; next = shown[at + ticks.length]) ticks.push(next);
    at += Math.max(0, ticks.length - 1);
    const mine: Setting = { ...setting, keep: at < shown.length - 1 ? setting.whole : setting.keep };
    const made = node.kind === "tickRow" ? [tickTable(ticks, mine)] : blocksOf(node, mine);
    for (const block of made) {
      if (block instanceof Table && out[out.length - 1] instanceof Table) out.push(sliver(mine, 4));
      out.push(block);
      if (SPACED.has(node.kind) && at < shown.length - 1) out.push(sliver(mine, 7));
    }
  }
  return out;
}
