import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, emptyEpisode, newLine, type Floor } from "../../../../shared/episode";
import { floorOf, type BlockFloor } from "../../../../shared/filming";
import type { Drawing, Shape } from "../../../../shared/exports/paper";
import { PLAN_SIZES, floorPlan, planInWords } from "../../../../shared/exports/shot-list/floor-plan";

/** A block with a mark for every "side full 2": angle, size and, when it was dragged there, distance and bearing. */
function plan(marks: readonly (readonly [view: string, distance?: number, bearing?: number])[], more: { exercise?: string; station?: string; room?: Partial<Floor> } = {}): BlockFloor {
  const newId = countingIds("p-");
  const { exercise = null, station = "free floor", room } = more;
  const block = emptyBlock(newId, "exercise", {
    exercise, station, lines: marks.map(([view]) => newLine(newId, "shot", `${view.replace(" ", ", ")}: x`)),
    filming: { filmed: [], marks: marks.flatMap(([view, distance, bearing = HOME[view.split(" ")[0] ?? ""] ?? 0]) => (distance === undefined ? [] : [{ mark: view, bearing, distance }])) },
  });
  const one = emptyEpisode(newId, { blocks: [block] });
  const floors = room ? [{ station, walls: { ahead: null, behind: null, left: null, right: null }, mirrors: [], aisle: null, ...room }] : [];
  return floorOf({ ...one, session: { ...one.session, floors } }, block);
}
const HOME: Readonly<Record<string, number>> = { side: 90, front: 0, rear: 180, "three-quarter": 45, high: 30, low: 70, insert: 60 };

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
    expect(floorPlan(plan([["insert insert"]]))).toBeNull();
  });

  it("puts the side mark left of the subject, the front mark above it, the rear mark below it", () => {
    const { mark, subject } = places(drawn(floorPlan(plan([["side full", 2], ["front full", 2], ["rear full", 2]]))));
    expect(mark("A")[0]).toBeLessThan(subject.x);
    expect(mark("A")[1]).toBeCloseTo(subject.y, 0);
    expect(mark("B")[1]).toBeLessThan(subject.y);
    expect(mark("B")[0]).toBeCloseTo(subject.x, 0);
    expect(mark("C")[1]).toBeGreaterThan(subject.y);
  });

  it("keeps distances to scale: a mark twice as far is drawn twice as far", () => {
    const { mark, subject } = places(drawn(floorPlan(plan([["side full", 1.5], ["rear full", 3]]))));
    const away = ([x, y]: readonly [number, number]) => Math.hypot(x - subject.x, y - subject.y);
    expect(away(mark("B")) / away(mark("A"))).toBeCloseTo(2, 1);
  });

  it("writes each distance and a scale bar", () => {
    const words = texts(drawn(floorPlan(plan([["side full", 2.9], ["rear full", 1.8]])))).map(({ text }) => text);
    expect(words).toEqual(expect.arrayContaining(["A", "2.9 m", "B", "1.8 m", "1 m", "free floor", "arrow: faces"]));
  });

  it("draws somebody lying as a body along the page, with the head named", () => {
    const made = drawn(floorPlan(plan([["side full", 2]], { exercise: "chest-supported-row", station: "incline bench" })));
    const body = made.shapes.find((shape) => shape.shape === "rect");
    expect(body?.shape === "rect" && body.h > body.w).toBe(true);
    expect(texts(made).map(({ text }) => text)).toContain("arrow: head");
  });

  it("draws walls, mirrors and the aisle with their words, and leaves out a wall far from everything", () => {
    const room = { walls: { ahead: 3, behind: null, left: 2.6, right: 40 }, mirrors: ["ahead"], aisle: "behind" } satisfies Partial<Floor>;
    const made = drawn(floorPlan(plan([["side full", 2]], { room })));
    expect(texts(made).map(({ text }) => text)).toEqual(expect.arrayContaining(["mirror", "aisle: keep free"]));
    const across = made.shapes.filter((shape) => shape.shape === "line" && shape.from[0] === 0 && shape.to[0] === made.width);
    const down = made.shapes.filter((shape) => shape.shape === "line" && shape.from[1] === 0 && shape.to[1] === made.height);
    expect([across.length, down.length]).toEqual([2, 1]);
    expect(made.alt).toContain("Mirror ahead at 3.0 m; wall left at 2.6 m; wall right at 40.0 m; people walk past behind.");
  });

  it("says the same in words for those who cannot see it", () => {
    const seen = plan([["side full", 2.9], ["insert insert", 0.4]]);
    expect(planInWords(seen)).toBe("Floor plan from above of the free floor: A, side, 2.9 m. The subject faces up the page.");
    expect(floorPlan(seen)?.alt).toBe(planInWords(seen));
  });

  it("keeps every circle and the beginning of every word inside the frame, whatever the marks and the room", () => {
    const views = ["side full", "front full", "rear medium", "high full", "low wide", "three-quarter medium", "insert insert"];
    const marks = fc.uniqueArray(fc.tuple(fc.constantFrom(...views), fc.double({ min: 0.3, max: 9, noNaN: true }), fc.integer({ min: -180, max: 180 })), { minLength: 1, maxLength: 7, selector: ([view]) => view });
    const wall = fc.option(fc.double({ min: 0.5, max: 12, noNaN: true }), { nil: null });
    const room = fc.record({ walls: fc.record({ ahead: wall, behind: wall, left: wall, right: wall }), mirrors: fc.subarray(["ahead", "left"] as const).map((sides) => [...sides]), aisle: fc.constantFrom(null, "right" as const, "behind" as const) });
    fc.assert(fc.property(marks, room, fc.constantFrom("beside", "across" as const), fc.string({ maxLength: 60 }), (each, around, size, station) => {
      const made = floorPlan(plan(each, { station, room: around }), size === "beside" ? "beside" : "across");
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
          expect(shape.x).toBeLessThanOrEqual(made.width);
          expect(shape.y).toBeGreaterThan(0);
          expect(shape.y).toBeLessThanOrEqual(made.height);
        }
      }
    }), { numRuns: 150, seed: 51 });
  });
});
