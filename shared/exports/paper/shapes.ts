import type { FontBook } from "./fonts";
import type { Pen, StrokeStyle } from "./pen";
import type { Shape } from "./tree";

/** Fills a printer can do without: white hides what lies below, light is a tint of 12 %. */
const FILLS = { black: 0, light: 0.88, white: 1 } as const;

/** Draws one shape of a drawing whose top left corner is at x, y of the page. */
export function paintShape(pen: Pen, fonts: FontBook, shape: Shape, x: number, y: number, scale: number): void {
  const at = ([px, py]: readonly [number, number]): readonly [number, number] => [x + px * scale, y + py * scale];
  if (shape.shape === "text") {
    paintText(pen, fonts, shape, at([shape.x, shape.y]), scale);
    return;
  }
  const stroke: StrokeStyle = {
    width: shape.width ?? 1,
    grey: shape.grey ? 0.45 : 0,
    ...(shape.dash ? { dash: [shape.dash[0] * scale, shape.dash[1] * scale] as const } : {}),
  };
  const fill = "fill" in shape && shape.fill ? FILLS[shape.fill] : null;
  switch (shape.shape) {
    case "line": return pen.line([at(shape.from), at(shape.to)], stroke);
    case "polyline": return pen.line(shape.points.map(at), stroke, shape.closed ?? false, fill);
    case "rect": {
      const [left, top] = at([shape.x, shape.y]);
      return pen.rect(left, top, shape.w * scale, shape.h * scale, stroke, fill);
    }
    case "circle": {
      const [cx, cy] = at([shape.x, shape.y]);
      return pen.circle(cx, cy, shape.r * scale, stroke, fill);
    }
  }
}

function paintText(pen: Pen, fonts: FontBook, shape: Extract<Shape, { shape: "text" }>, [x, y]: readonly [number, number], scale: number): void {
  const size = shape.size * scale;
  const parts = fonts.split(shape.text, shape.weight ?? "regular");
  const width = parts.reduce((sum, part) => sum + fonts.measure(part.text, part.face, size), 0);
  let left = x - (shape.anchor === "middle" ? width / 2 : shape.anchor === "end" ? width : 0);
  for (const { text, face } of parts) {
    const wide = fonts.measure(text, face, size);
    pen.text({ segments: [{ text, style: { face, size, grey: false }, x: 0, width: wide }], width: wide, spaceAfter: true }, left, y, shape.white ? 1 : 0);
    left += wide;
  }
}
