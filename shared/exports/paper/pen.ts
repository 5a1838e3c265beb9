import { PDFArray, PDFName, PDFNumber, PDFOperator, PDFOperatorNames as Op, type PDFHexString, type PDFContext, type PDFPage } from "pdf-lib";
import { MISSING_EM, hexOf, type FaceName, type FontBook, type TextStyle } from "./fonts";
import type { Tag, Tagger } from "./tagger";
import type { TextLine } from "./text";

/** Dark grey of second text: 8.5:1 on white, so it also survives a poor printer. */
const GREY = 0.3;
const RULES = { heavy: { width: 1.4, grey: 0 }, hair: { width: 0.6, grey: 0.62 } } as const;
export type RuleWeight = keyof typeof RULES;

export interface StrokeStyle {
  readonly width: number;
  /** 0 is black, 1 is white. */
  readonly grey: number;
  readonly dash?: readonly [number, number];
}

const num = (n: number): PDFNumber => PDFNumber.of(Math.round(n * 1000) / 1000);

/**
 * Draws on one page. Coordinates are points from the top left corner, y downwards; it turns them into PDF's own.
 * Text and lines alone know nothing of structure: wrap them in `mark` or `artifact`.
 */
export class Pen {
  private readonly resources = new Map<FaceName, PDFName>();

  constructor(readonly page: PDFPage, readonly height: number, private readonly fonts: FontBook, private readonly tagger: Tagger) {}

  /** Draws a smaller page within this one. @param matrix - as PDF writes it, from the smaller page's points to this one's */
  within(matrix: readonly [number, number, number, number, number, number], draw: () => void): void {
    this.put(PDFOperator.of(Op.PushGraphicsState), PDFOperator.of(Op.ConcatTransformationMatrix, matrix.map(num)));
    draw();
    this.put(PDFOperator.of(Op.PopGraphicsState));
  }

  mark(tag: Tag, draw: () => void): void {
    this.tagger.mark(this.page, tag, draw);
  }

  artifact(draw: () => void): void {
    this.tagger.artifact(this.page, draw);
  }

  /** One line of text. @param baseline - y of the baseline; @param grey - overrides the style's: 0 is black, 1 is white */
  text(line: TextLine<TextStyle>, x: number, baseline: number, grey?: number): void {
    line.segments.forEach((segment, i) => {
      const { style } = segment;
      const last = i === line.segments.length - 1;
      if (style.face === "missing") {
        this.missing(segment.text, x + segment.x, baseline, style.size);
        return;
      }
      this.show(segment.text + (last && line.spaceAfter ? " " : ""), style.face, style.size, x + segment.x, baseline, grey ?? (style.grey ? GREY : 0));
    });
  }

  /** Plain text at a point. @param grey - 0 is black, 1 is white */
  show(text: string, face: FaceName, size: number, x: number, baseline: number, grey: number): void {
    const { codes, tighten } = this.fonts.glyphs(text, face);
    this.put(
      PDFOperator.of(Op.BeginText),
      PDFOperator.of(Op.NonStrokingColorGray, [num(grey)]),
      PDFOperator.of(Op.SetFontAndSize, [this.resource(face), num(size)]),
      PDFOperator.of(Op.SetTextMatrix, [num(1), num(0), num(0), num(1), num(x), num(this.height - baseline)]),
      PDFOperator.of(Op.ShowTextAdjusted, [adjusted(this.page.doc.context, codes, tighten)]),
      PDFOperator.of(Op.EndText),
    );
  }

  /** An empty square in place of a character no font has; the character itself stays in the text layer (ISO 32000-1, 14.9.4). */
  private missing(text: string, x: number, baseline: number, size: number): void {
    const utf16 = Array.from({ length: text.length }, (_, i) => text.charCodeAt(i).toString(16).padStart(4, "0")).join("");
    const side = MISSING_EM * size * 0.78;
    this.put(PDFOperator.of(Op.BeginMarkedContentSequence, [PDFName.of("Span"), `<</ActualText <feff${utf16}>>>`]));
    this.rect(x + MISSING_EM * size * 0.11, baseline - side, side, side, { width: 0.7, grey: 0 });
    this.put(PDFOperator.of(Op.EndMarkedContent));
  }

  rule(weight: RuleWeight, x: number, y: number, width: number): void {
    this.line([[x, y], [x + width, y]], RULES[weight]);
  }

  line(points: readonly (readonly [number, number])[], stroke: StrokeStyle, closed = false, fill: number | null = null): void {
    this.put(PDFOperator.of(Op.PushGraphicsState), ...this.pencil(stroke, fill));
    points.forEach(([x, y], i) => this.put(PDFOperator.of(i === 0 ? Op.MoveTo : Op.LineTo, [num(x), num(this.height - y)])));
    if (closed) this.put(PDFOperator.of(Op.ClosePath));
    // A line of no width would still be the thinnest a printer draws.
    const paint = fill === null ? Op.StrokePath : stroke.width === 0 ? Op.FillNonZero : Op.FillNonZeroAndStroke;
    this.put(PDFOperator.of(paint), PDFOperator.of(Op.PopGraphicsState));
  }

  rect(x: number, y: number, w: number, h: number, stroke: StrokeStyle, fill: number | null = null): void {
    this.line([[x, y], [x + w, y], [x + w, y + h], [x, y + h]], stroke, true, fill);
  }

  /** A filled area without a line round it. */
  area(x: number, y: number, w: number, h: number, grey: number): void {
    this.put(
      PDFOperator.of(Op.PushGraphicsState),
      PDFOperator.of(Op.NonStrokingColorGray, [num(grey)]),
      PDFOperator.of(Op.AppendRectangle, [num(x), num(this.height - y - h), num(w), num(h)]),
      PDFOperator.of(Op.FillNonZero),
      PDFOperator.of(Op.PopGraphicsState),
    );
  }

  circle(x: number, y: number, r: number, stroke: StrokeStyle, fill: number | null = null): void {
    // Four cubic curves; 0.5523 puts their middles on the circle to 0.03 %.
    const k = 0.5523 * r;
    const cy = this.height - y;
    const curve = (...values: number[]) => PDFOperator.of(Op.AppendBezierCurve, values.map(num));
    this.put(
      PDFOperator.of(Op.PushGraphicsState), ...this.pencil(stroke, fill),
      PDFOperator.of(Op.MoveTo, [num(x + r), num(cy)]),
      curve(x + r, cy + k, x + k, cy + r, x, cy + r), curve(x - k, cy + r, x - r, cy + k, x - r, cy),
      curve(x - r, cy - k, x - k, cy - r, x, cy - r), curve(x + k, cy - r, x + r, cy - k, x + r, cy),
      PDFOperator.of(Op.ClosePath),
      PDFOperator.of(fill === null ? Op.StrokePath : Op.FillNonZeroAndStroke), PDFOperator.of(Op.PopGraphicsState),
    );
  }

  private pencil(stroke: StrokeStyle, fill: number | null): PDFOperator[] {
    return [
      PDFOperator.of(Op.SetLineWidth, [num(stroke.width)]),
      PDFOperator.of(Op.StrokingColorGray, [num(stroke.grey)]),
      ...(stroke.dash ? [PDFOperator.of(Op.SetLineDashPattern, [`[${stroke.dash[0]} ${stroke.dash[1]}]`, num(0)])] : []),
      ...(fill === null ? [] : [PDFOperator.of(Op.NonStrokingColorGray, [num(fill)])]),
    ];
  }

  private resource(face: FaceName): PDFName {
    let key = this.resources.get(face);
    if (!key) {
      const font = this.fonts.pdfFont(face);
      key = this.page.node.newFontDictionary(face, font.ref);
      this.resources.set(face, key);
    }
    return key;
  }

  private put(...operators: PDFOperator[]): void {
    this.page.pushOperators(...operators);
  }
}

/** The TJ array: stretches of glyphs with the kerning between them. */
function adjusted(context: PDFContext, codes: readonly string[], tighten: readonly number[]): PDFArray {
  const array = PDFArray.withContext(context);
  let stretch: string[] = [];
  const flush = () => {
    const hex: PDFHexString = hexOf(stretch);
    array.push(hex);
    stretch = [];
  };
  codes.forEach((code, i) => {
    stretch.push(code);
    const kern = tighten[i] ?? 0;
    if (Math.abs(kern) > 0.5 && i < codes.length - 1) {
      flush();
      array.push(PDFNumber.of(Math.round(kern)));
    }
  });
  if (stretch.length > 0) flush();
  return array;
}
