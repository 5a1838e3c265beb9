import { blank, sideBySide, stack, type Cell, type Piece } from "./pieces";
import { paintShape } from "./shapes";
import { name, words, type Tag } from "./tagger";
import { GUTTER, SIZES, paragraph, plain, type Field, type LogPart, type PaperNode, type Table, type TickRow } from "./tree";
import { LEADING, glued, lines, textPieces, type Room } from "./typeset";

type Writers = { readonly [K in PaperNode["kind"]]: (node: Extract<PaperNode, { kind: K }>, width: number, tag: Tag, room: Room) => readonly Piece[] };

export const TICK = 19.5;

/** The pieces of several nodes at a width, in reading order; what they say is hung below `tag`. */
export function layout(nodes: readonly PaperNode[], width: number, tag: Tag, room: Room): readonly Piece[] {
  return nodes.flatMap((node) => write(node, width, tag, room));
}

function write<K extends PaperNode["kind"]>(node: Extract<PaperNode, { kind: K }>, width: number, tag: Tag, room: Room): readonly Piece[] {
  const writer = writers[node.kind as K] as (node: Extract<PaperNode, { kind: K }>, width: number, tag: Tag, room: Room) => readonly Piece[];
  return writer(node, width, tag, room);
}

/** Columns across a width by their shares, with a gap between them. */
function share(width: number, shares: readonly number[], gap: number): { x: number; width: number }[] {
  const whole = shares.reduce((sum, part) => sum + part, 0) || 1;
  const free = width - gap * (shares.length - 1);
  let x = 0;
  return shares.map((part) => {
    const column = { x, width: (free * part) / whole };
    x += column.width + gap;
    return column;
  });
}

function tableHead(node: Table, columns: readonly { x: number; width: number }[], width: number, tag: Tag | null, room: Room): Piece {
  const row = tag?.child("TR") ?? null;
  const cells = node.columns.map((column, c): Cell => {
    const at = columns[c] ?? { x: 0, width };
    const cell = row?.child("TH").attributes("Table", { Scope: name("Column") }) ?? null;
    const text = { size: SIZES.head, weight: "semibold", align: column.align ?? "left" } as const;
    return { ...at, pieces: textPieces(column.head, at.width, text, cell, room) };
  });
  return { ...sideBySide(cells, { padding: { top: 3, bottom: 4 }, width, below: "heavy" }), glue: true };
}

const writers: Writers = {
  heading: (node, width, tag, room) => {
    const size = node.size ?? SIZES.headings[node.level];
    const before = { 1: 16, 2: 16, 3: 8 }[node.level];
    const set = { size, weight: node.level === 3 ? "semibold" : "bold", leading: LEADING.heading } as const;
    if (node.text.trim() === "") return [];
    const pieces = textPieces(node.text, width, set, tag.child(`H${node.level}`), room, { before, after: { 1: 3, 2: 5, 3: 3 }[node.level], glue: true });
    return glued(pieces).map((piece, i): Piece => i > 0 ? piece : {
      ...piece,
      paint: (pen, x, y) => {
        room.outline.add({ level: node.level, title: node.text, page: pen.page, top: Math.round(pen.height - y + 6) });
        piece.paint(pen, x, y);
      },
    });
  },

  paragraph: (node, width, tag, room) => {
    if (plain(node.text).trim() === "") return [];
    const set = { size: node.size ?? SIZES.body, weight: node.weight ?? "regular", grey: node.grey ?? false, align: node.align ?? "left" } as const;
    return textPieces(node.text, width, set, tag.child("P"), room, { after: node.after ?? 4, glue: node.keepWithNext ?? false });
  },

  list: (node, width, tag, room) => {
    const size = node.size ?? SIZES.body;
    const indent = node.ordered ? size * (1.1 + 0.6 * String(node.items.length).length) : size * 1.1;
    const listTag = tag.child("L").attributes("List", { ListNumbering: name(node.ordered ? "Decimal" : "Disc") });
    return node.items.flatMap((item, i) => {
      const itemTag = listTag.child("LI");
      const mark = textPieces(node.ordered ? `${i + 1}.` : "•", indent, { size }, itemTag.child("Lbl"), room)[0] ?? blank;
      const body = textPieces(item, width - indent, { size }, itemTag.child("LBody"), room, { after: i === node.items.length - 1 ? 6 : 2.5 });
      return (body.length > 0 ? body : [blank]).map((piece, l): Piece => ({
        ...piece,
        paint: (pen, x, y) => {
          if (l === 0) mark.paint(pen, x, y);
          piece.paint(pen, x + indent, y);
        },
      }));
    });
  },

  table: (node, width, tag, room) => {
    const columns = share(width, node.columns.map((column) => column.width), GUTTER);
    const tableTag = tag.child("Table").attributes("Table", { Summary: words(node.summary) });
    const head = tableHead(node, columns, width, tableTag.child("THead"), room);
    const again = tableHead(node, columns, width, null, room);
    const bodyTag = tableTag.child("TBody");
    const padding = node.padding ?? 5;
    const rows = node.rows.map((row, r): Piece => {
      const rowTag = bodyTag.child("TR");
      const cells = node.columns.map((column, c): Cell => {
        const at = columns[c] ?? { x: 0, width };
        const cellTag = c === node.rowHead ? rowTag.child("TH").attributes("Table", { Scope: name("Row") }) : rowTag.child("TD");
        const children = (row.cells[c] ?? []).map((child) => (child.kind === "paragraph" ? { ...child, align: child.align ?? column.align ?? "left", size: child.size ?? node.size ?? SIZES.body } : child));
        return { ...at, pieces: layout(children, at.width, cellTag, room) };
      });
      const piece = sideBySide(cells, { padding: { top: padding, bottom: padding }, width, valign: node.valign ?? "top", ...(row.goesOn ? {} : { below: "hair" as const }) });
      const withHead = (part: Piece): Piece => ({ ...part, head: again, split: (height) => { const halves = part.split?.(height); return halves ? [withHead(halves[0]), withHead(halves[1])] : null; } });
      return r === node.rows.length - 1 ? { ...withHead(piece), after: 10 } : withHead(piece);
    });
    return rows.length === 0 ? [] : [head, ...rows];
  },

  tickRow: (node, width, tag, room) => {
    const log = logLines(node, room);
    const columns = { tick: 30, label: 62, log: log.width };
    const body = width - columns.tick - columns.label - (log.width > 0 ? log.width + 12 : 0);
    const div = tag.child("Div");
    const form = node.field ? div.child("Form").alt(node.field.tip) : null;
    const box: Piece = {
      ...blank,
      height: TICK,
      paint: (pen, x, y) => {
        if (form && node.field) room.form.add(pen.page, form, { type: "tick", ...node.field }, { x, y: pen.height - y - TICK, width: TICK, height: TICK });
        else pen.artifact(() => pen.rect(x + 0.75, y + 0.75, TICK - 1.5, TICK - 1.5, { width: 1.5, grey: 0 }));
      },
    };
    const cells: Cell[] = [
      { x: 0, width: columns.tick, pieces: [box] },
      {
        x: columns.tick, width: columns.label - 8,
        pieces: [...textPieces(node.label, columns.label - 8, { size: 15, weight: "semibold" }, div.child("P"), room), ...layout([paragraph(node.under, { size: SIZES.small + 1, after: 0 })], columns.label - 8, div, room)],
      },
      {
        x: columns.tick + columns.label, width: body,
        pieces: [...(node.title ? textPieces(node.title, body, { size: 14, weight: "semibold", leading: (15 * LEADING.body) / 14 }, div.child("P"), room) : []), ...layout(node.text, body, div, room)],
      },
      { x: width - log.width, width: log.width, pieces: log.pieces(div) },
    ];
    return [{ ...sideBySide(cells, { padding: { top: 7, bottom: 9 }, width, above: "heavy" }) }];
  },

  box: (node, width, tag, room) => {
    const inset = node.edge === "bar" ? { x: 14, width: width - 14 } : { x: 10, width: width - 20 };
    const pieces = layout(node.children, inset.width, tag.child("Div"), room);
    const pad = node.edge === "bar" ? 1.5 : 8;
    return [{ ...sideBySide([{ ...inset, pieces }], { padding: { top: pad, bottom: pad }, width, edge: node.edge }), before: 6, after: 10 }];
  },

  keyValues: (node, width, tag, room) => {
    const keyWidth = node.keyWidth ?? 90;
    const size = node.size ?? SIZES.body;
    return node.pairs.map(({ key, value }) => {
      const pair = tag.child("P");
      const cells = [
        { x: 0, width: keyWidth - 8, pieces: textPieces([{ text: key }, { text: " " }], keyWidth - 8, { size, weight: "semibold" }, pair, room) },
        { x: keyWidth, width: width - keyWidth, pieces: textPieces(value, width - keyWidth, { size }, pair, room) },
      ];
      return { ...sideBySide(cells, { padding: { top: 0, bottom: 0 }, width }), after: 3 };
    });
  },

  rule: (node, width) => [{ ...blank, before: 4, after: 2, height: 1, paint: (pen, x, y) => pen.artifact(() => pen.rule(node.weight, x, y + 0.5, width)) }],

  spacer: (node, _width, _tag, room) => [{ ...blank, height: Math.min(node.height, room.page), gap: true }],

  field: (node, width, tag, room) => fieldPiece([node], width, tag, room),

  fieldRow: (node, width, tag, room) => fieldPiece(node.fields, width, tag, room),

  drawing: (node, width, tag, room) => {
    const scale = Math.min(1, width / node.width, (room.page * 0.9) / node.height);
    const figure = tag.child("Figure").alt(node.alt);
    return [{
      ...blank,
      height: node.height * scale,
      after: 6,
      paint: (pen, x, y) => pen.mark(figure, () => {
        for (const shape of node.shapes) paintShape(pen, room.fonts, shape, x, y, scale);
        if (node.frame) pen.rect(x + 0.5, y + 0.5, node.width * scale - 1, node.height * scale - 1, { width: 1, grey: 0 });
      }),
    }];
  },

  columns: (node, width, tag, room) => {
    const places = share(width, node.columns.map((column) => column.width), node.gap ?? 18);
    const cells = node.columns.map((column, c): Cell => {
      const at = places[c] ?? { x: 0, width };
      return { ...at, pieces: layout(column.children, at.width, tag.child("Div"), room) };
    });
    return [{ ...sideBySide(cells, { padding: { top: 0, bottom: 0 }, width }), after: 6 }];
  },

  pageBreak: () => [{ ...blank, breaks: true }],

  keepTogether: (node, width, tag, room) => {
    const pieces = layout(node.children, width, tag, room);
    return stack(pieces).height <= room.page ? glued(pieces) : pieces;
  },
};

const FIELD_GAP = 4;

/** Fields beside each other, as many to a line as fit. */
function fieldPiece(fields: readonly Field[], width: number, tag: Tag, room: Room): readonly Piece[] {
  const rows: { field: Field; form: Tag; x: number; width: number; height: number }[][] = [[]];
  let x = 0;
  for (const field of fields) {
    const wide = Math.min(field.width ?? width, width);
    if (x > 0 && x + wide > width + 1e-6) {
      rows.push([]);
      x = 0;
    }
    rows.at(-1)?.push({ field, form: tag.child("Form").alt(field.tip), x, width: wide, height: Math.min(field.height, room.page) });
    x += wide + FIELD_GAP;
  }
  return rows.filter((row) => row.length > 0).map((row): Piece => ({
    ...blank,
    height: Math.max(...row.map((place) => place.height)),
    after: FIELD_GAP,
    paint: (pen, left, top) => {
      for (const place of row) {
        room.form.add(pen.page, place.form, place.field, { x: left + place.x, y: pen.height - top - place.height, width: place.width, height: place.height });
      }
    },
  }));
}

/** The lines to log on: words with room to write between them. Their tags are made last, when `pieces` is called. */
function logLines(node: TickRow, room: Room): { readonly width: number; readonly pieces: (tag: Tag) => readonly Piece[] } {
  const size = SIZES.small;
  const gap = 3;
  const measure = (part: LogPart) => (typeof part === "string" ? room.fonts.measure(part, "regular", size) : part.blank);
  const widths = node.log.map((line) => line.reduce((sum: number, part) => sum + measure(part) + gap, -gap));
  const width = Math.max(0, ...widths);
  const pieces = (tag: Tag) => node.log.map((line, i): Piece => {
    const height = 15 * LEADING.body;
    const said = line.some((part) => typeof part === "string") ? tag.child("P") : null;
    return {
      ...blank, height,
      paint: (pen, left, top) => {
        let x = left + width - (widths[i] ?? 0);
        const baseline = top + height / 2 + 15 * 0.33;
        for (const part of line) {
          const at = x;
          if (typeof part !== "string") pen.artifact(() => pen.line([[at, baseline + 1], [at + part.blank, baseline + 1]], { width: 0.8, grey: 0 }));
          else if (said) pen.mark(said, () => pen.text({ segments: lines(part, Infinity, { size }, room.fonts)[0]?.segments ?? [], width: 0, spaceAfter: true }, at, baseline));
          x += measure(part) + gap;
        }
      },
    };
  });
  return { width, pieces };
}
