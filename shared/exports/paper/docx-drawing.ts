import { Paragraph, TextRun } from "docx";
import { ShapeGroupRun, type IShapeGroupChildOptions, type ShapeLineOptions } from "docx/shapes";
import { BLACK, FACE, GREY, halfPoints, pixels, twips } from "./docx-units";
import type { Drawing, Shape } from "./tree";

const FILLS = { black: BLACK, light: "DDDDDD", white: "FFFFFF" } as const;
const NO_LINE: ShapeLineOptions = { width: 0, transparency: 100 };
/** Average letter width and line height as shares of the type size; only the box round a text hangs on them, its words never wrap. */
const LETTER = 0.6;
const LEADING = 1.2;
/** Where the baseline lies in a line of that height. */
const BASELINE = 0.96;

type Stroked = Extract<Shape, { shape: "line" | "polyline" | "rect" | "circle" }>;

/** Dashes are told in multiples of the line's width (DrawingML a:ds). */
function strokeOf(shape: Stroked, scale: number): ShapeLineOptions {
  const width = (shape.width ?? 1) * scale;
  if (width <= 0) return NO_LINE;
  return {
    color: shape.grey ? GREY : BLACK,
    width,
    ...(shape.dash ? { dash: [{ length: (shape.dash[0] * scale) / width, gap: (shape.dash[1] * scale) / width }] } : {}),
  };
}

const fillOf = (fill: keyof typeof FILLS | undefined): { fill?: string } => (fill ? { fill: FILLS[fill] } : {});

function box(x: number, y: number, w: number, h: number, scale: number) {
  return { offset: { left: pixels(x * scale), top: pixels(y * scale) }, width: pixels(w * scale), height: pixels(h * scale) };
}

/** A text is an invisible box whose first baseline lies at y. The box stays inside the drawing, or the whole group would grow. */
function textShape(shape: Extract<Shape, { shape: "text" }>, frame: Drawing, scale: number): IShapeGroupChildOptions {
  const { x, y, size, anchor = "start" } = shape;
  const wanted = Math.max(size, shape.text.length * size * LETTER);
  const half = Math.max(1, Math.min(wanted / 2, x, frame.width - x));
  const left = anchor === "middle" ? x - half : anchor === "end" ? Math.max(0, x - wanted) : x;
  const right = anchor === "middle" ? x + half : anchor === "end" ? x : Math.min(frame.width, x + wanted);
  const top = Math.max(0, y - size * BASELINE);
  return {
    type: "rectangle",
    transformation: box(left, top, Math.max(1, right - left), size * LEADING, scale),
    line: NO_LINE,
    textOptions: { margins: { top: 0, right: 0, bottom: 0, left: 0 }, wrap: false, verticalAlignment: "top" },
    children: [
      new Paragraph({
        alignment: anchor === "middle" ? "center" : anchor === "end" ? "right" : "left",
        spacing: { before: 0, after: 0, line: twips(size * LEADING * scale), lineRule: "exact" },
        children: [new TextRun({ text: shape.text, font: FACE, size: halfPoints(size * scale), color: shape.white ? "FFFFFF" : BLACK, bold: shape.weight === "bold" || shape.weight === "semibold" })],
      }),
    ],
  };
}

function shapeOf(shape: Shape, frame: Drawing, scale: number): IShapeGroupChildOptions {
  switch (shape.shape) {
    case "text":
      return textShape(shape, frame, scale);
    case "line": {
      const [[x1, y1], [x2, y2]] = [shape.from, shape.to];
      const rises = (x2 - x1) * (y2 - y1) < 0;
      return {
        type: "line",
        transformation: { ...box(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1), scale), ...(rises ? { flip: { vertical: true } } : {}) },
        line: strokeOf(shape, scale),
      };
    }
    case "rect":
      return { type: "rectangle", transformation: box(shape.x, shape.y, shape.w, shape.h, scale), line: strokeOf(shape, scale), ...fillOf(shape.fill) };
    case "circle":
      return { type: "ellipse", transformation: box(shape.x - shape.r, shape.y - shape.r, 2 * shape.r, 2 * shape.r, scale), line: strokeOf(shape, scale), ...fillOf(shape.fill) };
    case "polyline": {
      const xs = shape.points.map(([x]) => x);
      const ys = shape.points.map(([, y]) => y);
      const path = shape.points.map(([x, y], at) => `${at === 0 ? "M" : "L"} ${x} ${y}`).join(" ") + (shape.closed ? " Z" : "");
      const left = Math.min(...xs);
      const top = Math.min(...ys);
      return { type: "custom", path, transformation: box(left, top, Math.max(...xs) - left, Math.max(...ys) - top, scale), line: strokeOf(shape, scale), ...fillOf(shape.fill) };
    }
  }
}

/**
 * A drawing as vector shapes with real text (DrawingML, ECMA-376 part 1 clause 20), never an image.
 * @param width - room in points; a wider drawing is scaled down to it
 */
export function drawingRun(drawing: Drawing, width: number): ShapeGroupRun {
  const scale = Math.min(1, width / drawing.width);
  // The frame is always there, if only unseen: it fixes the group's size.
  const frame: IShapeGroupChildOptions = {
    type: "rectangle",
    transformation: box(0, 0, drawing.width, drawing.height, scale),
    line: drawing.frame ? { color: BLACK, width: 1 } : NO_LINE,
  };
  const shapes = drawing.shapes.filter((shape) => shape.shape !== "polyline" || shape.points.length > 1);
  return new ShapeGroupRun({ altText: { name: "Drawing", description: drawing.alt }, children: [frame, ...shapes.map((shape) => shapeOf(shape, drawing, scale))] });
}
