import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ANGLES, type Angle } from "../../../../shared/exercises";
import type { Drawing, Shape } from "../../../../shared/exports/paper";
import { PLAN_SIZES, floorPlan, planInWords, type FloorPlan } from "../../../../shared/exports/shot-list/floor-plan";

const plan = (marks: readonly (readonly [string, Angle, number])[], more: Partial<FloorPlan> = {}): FloorPlan => ({
  marks: marks.map(([letter, angle, distance]) => ({ letter, angle, distance })), station: "free floor", position: "standing", ...more,
});

type Circle = Extract<Shape, { shape: "circle" }>;
type Words = Extract<Shape, { shape: "text" }>;
const texts = (drawing: Drawing): Words[] => drawing.shapes.filter((shape): shape is Words => shape.shape === "text");

/** Where a mark's letter is written, and where the standing subject is. */
function places(drawing: Drawing): { mark: (letter: string) => readonly [number, number]; subject: Circle } {
  const circles = drawing.shapes.filter((shape): shape is Circle => shape.shape === "circle");
  const subject = circles.find((circle) => circle.fill === "light");
  if (!subject) throw new Error("no subject");
  return {
    subject,
    mark: (letter) => {
      const text = texts(drawing).find((words) => words.text === letter);
      const circle = circles.find((each) => each.x === text?.x && each.fill !== "light" && Math.abs(each.y - (text?.y ?? 0)) < 6);
      if (!circle) throw new Error(`no mark ${letter}`);
      return [circle.x, circle.y];
    },
  };
}

const drawn = (made: Drawing | null): Drawing => {
  if (!made) throw new Error("no drawing");
  return made;
};

describe("floorPlan", () => {
  it("draws nothing without a mark that stands on the floor", () => {
    expect(floorPlan(plan([]))).toBeNull();
    expect(floorPlan(plan([["A", "insert", 0.4]]))).toBeNull();
  });

  it("puts the side mark left of the subject, the front mark above it, the rear mark below it", () => {
    const { mark, subject } = places(drawn(floorPlan(plan([["A", "side", 2], ["B", "front", 2], ["C", "rear", 2]]))));
    expect(mark("A")[0]).toBeLessThan(subject.x);
    expect(mark("A")[1]).toBeCloseTo(subject.y, 0);
    expect(mark("B")[1]).toBeLessThan(subject.y);
    expect(mark("B")[0]).toBeCloseTo(subject.x, 0);
    expect(mark("C")[1]).toBeGreaterThan(subject.y);
  });

  it("keeps distances to scale: a mark twice as far is drawn twice as far", () => {
    const { mark, subject } = places(drawn(floorPlan(plan([["A", "side", 1.5], ["B", "rear", 3]]))));
    const away = ([x, y]: readonly [number, number]) => Math.hypot(x - subject.x, y - subject.y);
    expect(away(mark("B")) / away(mark("A"))).toBeCloseTo(2, 1);
  });

  it("writes each distance and a scale bar", () => {
    const words = texts(drawn(floorPlan(plan([["A", "side", 2.9], ["B", "rear", 1.8]])))).map(({ text }) => text);
    expect(words).toEqual(expect.arrayContaining(["A", "2.9 m", "B", "1.8 m", "1 m", "free floor", "arrow: faces"]));
  });

  it("stands marks of one angle and one distance apart", () => {
    const { mark } = places(drawn(floorPlan(plan([["A", "side", 2], ["B", "side", 2]]), "across")));
    const [a, b] = [mark("A"), mark("B")];
    expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThan(11);
  });

  it("draws somebody lying as a body along the page, with the head named", () => {
    const made = drawn(floorPlan(plan([["A", "side", 2]], { position: "lying face down", station: "incline bench" })));
    const body = made.shapes.find((shape) => shape.shape === "rect");
    expect(body?.shape === "rect" && body.h > body.w).toBe(true);
    expect(texts(made).map(({ text }) => text)).toContain("arrow: head");
  });

  it("says the same in words for those who cannot see it", () => {
    const seen = plan([["A", "side", 2.9], ["C", "insert", 0.4]]);
    expect(planInWords(seen)).toBe("Floor plan from above of the free floor: A, side, 2.9 m. The subject faces up the page.");
    expect(floorPlan(seen)?.alt).toBe(planInWords(seen));
  });

  it("keeps every circle and the beginning of every word inside the frame, whatever the marks", () => {
    const mark = fc.tuple(fc.constantFrom("A", "B", "AA"), fc.constantFrom(...ANGLES), fc.double({ min: 0.3, max: 9, noNaN: true }));
    fc.assert(fc.property(fc.array(mark, { minLength: 1, maxLength: 7 }), fc.constantFrom("beside", "across" as const), fc.string({ maxLength: 60 }), (marks, size, station) => {
      const made = floorPlan(plan(marks, { station }), size === "beside" ? "beside" : "across");
      if (!made) return;
      expect([made.width, made.height]).toEqual(Object.values(PLAN_SIZES[size === "beside" ? "beside" : "across"]));
      for (const shape of made.shapes) {
        if (shape.shape === "circle") {
          expect(shape.x - shape.r).toBeGreaterThanOrEqual(0);
          expect(shape.x + shape.r).toBeLessThanOrEqual(made.width);
          expect(shape.y - shape.r).toBeGreaterThanOrEqual(0);
          expect(shape.y + shape.r).toBeLessThanOrEqual(made.height);
        }
        if (shape.shape === "text") {
          expect(shape.x).toBeGreaterThanOrEqual(0);
          expect(shape.x).toBeLessThan(made.width);
          expect(shape.y).toBeGreaterThan(0);
          expect(shape.y).toBeLessThanOrEqual(made.height);
        }
      }
    }));
  });
});
