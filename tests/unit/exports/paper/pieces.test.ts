import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blank, paginate, sideBySide, stack, type Piece } from "../../../../shared/exports/paper/pieces";

const slice = (height: number, more: Partial<Piece> = {}): Piece => ({ ...blank, height, ...more });
const heights = (pages: readonly (readonly Piece[])[]) => pages.map((page) => page.map((piece) => piece.height));

describe("cutting a stack into pages", () => {
  it.each([
    ["fills a page and goes on", [slice(40), slice(60), slice(10)], [[40, 60], [10]]],
    ["drops the space above what begins a page", [slice(90), slice(100, { before: 30 })], [[90], [100]]],
    ["counts the space between two pieces", [slice(50, { after: 6 }), slice(50)], [[50], [50]]],
    ["takes a heading along to the page of its text", [slice(70), slice(20, { glue: true }), slice(20)], [[70], [20, 20]]],
    ["takes a chain of headings along", [slice(50), slice(20, { glue: true }), slice(20, { glue: true }), slice(20)], [[50], [20, 20, 20]]],
    ["begins a page where one is asked for", [slice(10), slice(0, { breaks: true }), slice(10)], [[10], [10]]],
    ["makes no empty page for a break at the top", [slice(0, { breaks: true }), slice(10)], [[10]]],
    ["draws the head of a table again", [slice(10, { glue: true }), slice(80), slice(80, { head: slice(10, { glue: true }) })], [[10, 80], [10, 80]]],
    ["gives one empty page for nothing", [], [[]]],
  ])("%s", (_name, pieces, expected) => {
    expect(heights(paginate(pieces, 100))).toEqual(expected);
  });

  it("uses what is left of a page that something stands on", () => {
    expect(heights(paginate([slice(40), slice(40)], 100, 50))).toEqual([[40], [40]]);
    expect(heights(paginate([slice(60), slice(40)], 100, 50))).toEqual([[], [60, 40]]);
  });

  it("leaves a row whole when a page can hold it, and cuts it only when none can", () => {
    const row = (lines: number) => sideBySide([{ x: 0, width: 10, pieces: Array.from({ length: lines }, () => slice(10)) }], { padding: { top: 0, bottom: 0 }, width: 10 });
    expect(heights(paginate([slice(60), row(9)], 100))).toEqual([[60], [90]]);
    expect(heights(paginate([row(25)], 100))).toEqual([[100], [100], [50]]);
  });

  it("gives back two rows that together hold every line of both cells", () => {
    const cell = (x: number, lines: number) => ({ x, width: 10, pieces: Array.from({ length: lines }, () => slice(10)) });
    const row = sideBySide([cell(0, 12), cell(10, 3)], { padding: { top: 5, bottom: 5 }, width: 20 });
    const halves = row.split?.(60);
    expect(halves?.map((half) => half.height)).toEqual([60, 80]);
  });

  const piece = fc.record({ height: fc.integer({ min: 1, max: 60 }), before: fc.integer({ min: 0, max: 20 }), after: fc.integer({ min: 0, max: 20 }), glue: fc.boolean() })
    .map((fields): Piece => slice(fields.height, fields));

  it("puts nothing below the foot of a page", () => {
    fc.assert(fc.property(fc.array(piece, { maxLength: 40 }), fc.integer({ min: 60, max: 200 }), (pieces, room) => {
      for (const page of paginate(pieces, room)) expect(stack(page).height).toBeLessThanOrEqual(room + 1e-6);
    }));
  });

  it("drops empty room at the top of a page, and only there", () => {
    const gap = slice(10, { gap: true });
    expect(heights(paginate([slice(95), gap, slice(50)], 100))).toEqual([[95], [50]]);
    expect(heights(paginate([slice(50), gap, slice(30)], 100))).toEqual([[50, 10, 30]]);
  });

  it("keeps every piece once and in order", () => {
    fc.assert(fc.property(fc.array(piece, { maxLength: 40 }), fc.integer({ min: 60, max: 200 }), (pieces, room) => {
      expect(paginate(pieces, room).flat().map((each) => each.height)).toEqual(pieces.map((each) => each.height));
    }));
  });

  it("never ends a page with a heading when heading and text fit one page", () => {
    const pair = fc.tuple(fc.integer({ min: 5, max: 25 }), fc.integer({ min: 5, max: 60 }));
    fc.assert(fc.property(fc.array(pair, { minLength: 1, maxLength: 20 }), (pairs) => {
      const pages = paginate(pairs.flatMap(([head, text]) => [slice(head, { glue: true }), slice(text)]), 100);
      for (const page of pages) expect(page.at(-1)?.glue).toBe(false);
    }));
  });
});
