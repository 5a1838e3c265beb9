import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, type BlockKind } from "../../../shared/episode";
import { bandAt, bandPath, curveAt, cutAt, figuresShown, ribbonShape } from "../../../renderer/ribbon/geometry";
import { moveTo, placeForNew } from "../../../renderer/ribbon/order";

const two = [{ floor: 600, screen: 60 }, { floor: 600, screen: 180 }];

describe("ribbonShape", () => {
  it("gives each edge its own scale, from limit to height", () => {
    const { bands, limit } = ribbonShape(two, 2400, 240, 606);
    // 6 px of 606 keep two bands visible; the rest is shared out.
    expect(bands[0]?.left).toEqual({ top: 0, bottom: 3 + 150 });
    expect(bands[0]?.right).toEqual({ top: 0, bottom: 3 + 150 });
    expect(bands[1]?.right.bottom).toBe(606);
    expect(limit).toEqual({ left: 606, right: 606 });
  });

  it("puts the limit inside the ribbon when more is planned than fits", () => {
    const { limit, end } = ribbonShape(two, 900, 240, 606);
    expect(end.left).toBe(606);
    // The first block and half of the second.
    expect(limit.left).toBeCloseTo(3 + 300 + 3 + 150);
    expect(limit.right).toBe(606);
  });

  it("keeps a block without time visible", () => {
    const { bands } = ribbonShape([{ floor: 0, screen: 0 }, ...two], 1200, 240, 600);
    expect(bands[0]?.left).toEqual({ top: 0, bottom: 3 });
  });

  it("is empty for no blocks", () => {
    expect(ribbonShape([], 3600, 600, 500)).toEqual({ bands: [], limit: { left: 500, right: 500 }, end: { left: 0, right: 0 } });
  });

  it("never leaves the drawing and never turns a band over", () => {
    const share = fc.record({ floor: fc.integer({ min: 0, max: 4000 }), screen: fc.integer({ min: 0, max: 900 }) });
    fc.assert(
      fc.property(fc.array(share, { maxLength: 80 }), fc.integer({ min: 60, max: 7200 }), fc.integer({ min: 10, max: 3600 }), (shares, slot, target) => {
        const { bands, limit } = ribbonShape(shares, slot, target, 700);
        for (const edge of bands.flatMap((band) => [band.left, band.right])) {
          expect(edge.bottom).toBeGreaterThan(edge.top);
          expect(edge.bottom).toBeLessThanOrEqual(700.001);
        }
        expect(Math.max(limit.left, limit.right)).toBeLessThanOrEqual(700.001);
      }),
    );
  });
});

describe("finding a band under the pointer", () => {
  const shape = ribbonShape([{ floor: 100, screen: 900 }, { floor: 900, screen: 100 }], 1000, 1000, 1000);

  it("follows the curve instead of the box", () => {
    expect(bandAt(shape, 0, 300)).toBe(1);
    expect(bandAt(shape, 1, 300)).toBe(0);
    expect(bandAt(shape, 0.5, 499)).toBe(0);
    expect(bandAt(shape, 0.5, 501)).toBe(1);
  });

  it("takes the last band below all and none when there are none", () => {
    expect(bandAt(shape, 0.5, 5000)).toBe(1);
    expect(bandAt(ribbonShape([], 60, 60, 100), 0.5, 10)).toBe(-1);
  });

  it("drops before a band in its upper half and after it in its lower half", () => {
    expect(cutAt(shape, 0.5, 100)).toBe(0);
    expect(cutAt(shape, 0.5, 400)).toBe(1);
    expect(cutAt(shape, 0.5, 900)).toBe(2);
  });
});

describe("curves", () => {
  it("run level at both ends and through the middle", () => {
    expect([0, 0.5, 1].map((t) => curveAt(10, 30, t))).toEqual([10, 20, 30]);
  });

  it("close the outline of a band", () => {
    expect(bandPath({ left: { top: 0, bottom: 30 }, right: { top: 10, bottom: 20 } }, 0, 90, 0)).toBe("M0 0C30 0 60 10 90 10V20C60 20 30 30 0 30Z");
  });
});

describe("figuresShown", () => {
  const edges = [{ top: 0, bottom: 10 }, { top: 10, bottom: 14 }, { top: 14, bottom: 40 }];

  it("prefers larger shares where two figures would touch", () => {
    expect([...figuresShown(edges, 13)].sort()).toEqual([0, 2]);
  });

  it("always shows those asked for first", () => {
    expect(figuresShown(edges, 13, [1]).has(1)).toBe(true);
    expect(figuresShown(edges, 13, [1]).has(0)).toBe(false);
  });
});

describe("placeForNew", () => {
  const id = countingIds("b");
  const order = (...kinds: BlockKind[]) => kinds.map((kind) => emptyBlock(id, kind));
  const blocks = order("opening", "warm-up", "exercise", "exercise", "cool-down", "closing");

  it.each<[BlockKind, number]>([["opening", 0], ["warm-up", 1], ["exercise", 4], ["talk", 4], ["cool-down", 5], ["closing", 6]])("puts a %s at %i when the caret is nowhere", (kind, at) => {
    expect(placeForNew(kind, blocks, null)).toBe(at);
  });

  it("puts an exercise after the one the caret is in", () => {
    expect(placeForNew("exercise", blocks, blocks[2]?.id ?? "")).toBe(3);
  });

  it("never puts an exercise after the cool-down", () => {
    expect(placeForNew("exercise", blocks, blocks[5]?.id ?? "")).toBe(4);
  });

  it("starts an empty episode", () => {
    expect(placeForNew("exercise", [], null)).toBe(0);
  });
});

describe("moveTo", () => {
  it("counts the list without the block that moves", () => {
    expect(moveTo(0, 3)).toBe(2);
    expect(moveTo(3, 0)).toBe(0);
  });

  it("is null where nothing would change", () => {
    expect(moveTo(2, 2)).toBeNull();
    expect(moveTo(2, 3)).toBeNull();
  });
});
