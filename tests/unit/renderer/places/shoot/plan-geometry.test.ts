import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FLOOR_SIDES} from "../../../../../shared/episode";
import { countingIds, emptyBlock, emptyEpisode, newLine } from "../../../../../shared/episode";
import { floorOf, type BlockFloor } from "../../../../../shared/filming";
import { planScale, toPoint, toSpot, wallLine } from "../../../../../renderer/places/shoot/plan-geometry";

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

  it("draws a wall that is near and leaves out one that is far away", () => {
    const scale = planScale(floor(["Side, full: a"], { left: 3.5, right: 30 }));
    expect(wallLine(scale, "left", 3.5)).not.toBeNull();
    expect(wallLine(scale, "right", 30)).toBeNull();
  });
});
