import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FLOOR_SIDES, countingIds, emptyBlock, emptyEpisode, newLine } from "../../../../../shared/episode";
import { floorOf, type BlockFloor } from "../../../../../shared/filming";
import { aisleStrip, planScale, scaleBar, toPoint, toSpot, wallLine, within } from "../../../../../renderer/places/shoot/plan-geometry";

const newId = countingIds("g");
function floor(shots: readonly string[], walls: Partial<Record<(typeof FLOOR_SIDES)[number], number>> = {}): BlockFloor {
  const block = emptyBlock(newId, "exercise", { station: "rack", lines: shots.map((text) => newLine(newId, "shot", text)) });
  const one = emptyEpisode(newId, { blocks: [block] });
  return floorOf({ ...one, session: { ...one.session, floors: [{ station: "rack", walls: { ahead: null, behind: null, left: null, right: null, ...walls }, mirrors: [], aisle: null }] } }, block);
}

describe("the plan of a station", () => {
  it("puts the person's left on the left and what is ahead above", () => {
    const scale = planScale(floor(["Side, full: a", "Front, full: b"]));
    const [x, y] = toPoint(scale, [0, 0]);
    expect(toPoint(scale, [-1, 0])[0]).toBeCloseTo(x - scale.metre);
    expect(toPoint(scale, [0, 1])[1]).toBeCloseTo(y - scale.metre);
  });

  it("holds every mark, whatever is filmed and however small the room", () => {
    const shots = fc.uniqueArray(fc.constantFrom("Side, full: a", "Front, wide: b", "Rear, medium: c", "High, full: d", "Low, wide: e", "Insert: f"), { minLength: 1 });
    const wall = fc.option(fc.double({ min: 0.5, max: 20, noNaN: true }), { nil: undefined });
    fc.assert(fc.property(shots, fc.record({ ahead: wall, left: wall }), (lines, walls) => {
      const made = floor(lines, Object.fromEntries(Object.entries(walls).filter(([, value]) => value !== undefined)) as Record<string, number>);
      const scale = planScale(made);
      for (const { spot } of made.marks) {
        const [x, y] = toPoint(scale, spot);
        expect(x > 12 && x < scale.width - 12 && y > 12 && y < scale.height - 12).toBe(true);
      }
    }), { numRuns: 100 });
  });

  it("leads from a spot to a point and back", () => {
    const scale = planScale(floor(["Side, full: a"]));
    fc.assert(fc.property(fc.double({ min: -9, max: 9, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true }), (right, ahead) => {
      const [r, a] = toSpot(scale, toPoint(scale, [right, ahead]));
      expect(r).toBeCloseTo(right, 6);
      expect(a).toBeCloseTo(ahead, 6);
    }));
  });

  it("brings a pointer that left the drawing back to where a mark is drawn whole", () => {
    const scale = planScale(floor(["Side, full: a"]));
    expect(within(scale, [-50, 9999])).toEqual([14, scale.height - 14]);
    expect(within(scale, [100, 120])).toEqual([100, 120]);
  });

  it("draws a wall that is near and leaves out one that is far away", () => {
    const made = floor(["Side, full: a"], { left: 3.5, right: 30 });
    const scale = planScale(made);
    const room = made.room ?? expect.fail("no room");
    expect(wallLine(scale, room, "left")).not.toBeNull();
    expect(wallLine(scale, room, "right")).toBeNull();
    expect(wallLine(scale, room, "ahead")).toBeNull();
  });

  it("ends walls where they meet", () => {
    const made = floor(["Side, full: a"], { left: 3, right: 2, ahead: 2, behind: 2 });
    const scale = planScale(made);
    const lines = FLOOR_SIDES.map((side) => wallLine(scale, made.room ?? expect.fail("no room"), side) ?? expect.fail(side));
    const [left, top, right, bottom] = [scale.x - 3 * scale.metre, scale.y - 2 * scale.metre, scale.x + 2 * scale.metre, scale.y + 2 * scale.metre];
    expect(new Set(lines.map((line) => line.map((value) => value.toFixed(3)).join()))).toEqual(
      new Set([[left, top, right, top], [left, bottom, right, bottom], [left, top, left, bottom], [right, top, right, bottom]].map((line) => line.map((value) => value.toFixed(3)).join())),
    );
  });

  it("runs the aisle along its wall, inside the room, and keeps the bar of a metre clear of it", () => {
    const made = floor(["Side, full: a"], { behind: 2, left: 3 });
    const scale = planScale(made);
    const room = { ...(made.room ?? expect.fail("no room")), aisle: "behind" as const };
    const strip = aisleStrip(scale, room, "behind");
    expect(strip.y + strip.height).toBeCloseTo(scale.y + 2 * scale.metre);
    expect(strip.x).toBeCloseTo(scale.x - 3 * scale.metre);
    const open = { ...room, walls: { ahead: null, behind: null, left: null, right: null } };
    expect(aisleStrip(scale, open, "behind")).toEqual({ x: 0, y: scale.height - 15, width: scale.width, height: 15 });
    expect(scaleBar(scale, open)[1]).toBeLessThan(scale.height - 15);
    expect(scaleBar(scale, { ...open, aisle: "left" })[0]).toBeGreaterThan(15);
    expect(scaleBar(scale, { ...open, aisle: "ahead" })).toEqual(scaleBar(scale, null));
  });
});
