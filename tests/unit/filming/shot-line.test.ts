import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ANGLES } from "../../../shared/exercises";
import { parseShotLine, printShotLine, SHOT_SIZES, type Shot } from "../../../shared/filming";

const nothing: Shot = { angle: null, size: null, sets: null, on: null, need: "must", seconds: null, subject: "" };

/** Subjects a coach could write, with the traps of the grammar among them. */
const subjects = fc.oneof(
  fc.constantFrom("", "the whole arm path", "side", "Front: knees", "set 2: depth", "12 s", "1:30", ": x", "knees, side: path", "must", "nice: hands", "full", "insert", "2", "a:b", "any angle, full", "side - knees", "knees - side: x"),
  fc.string({ unit: fc.constantFrom("a", "s", " ", ",", ":", "2", "-", "side", "set", "full"), maxLength: 12 }).map((text) => text.trim()),
  fc.string({ maxLength: 30 }).map((text) => text.trim()),
);
const shots: fc.Arbitrary<Shot> = fc.record({
  angle: fc.option(fc.constantFrom(...ANGLES)),
  size: fc.option(fc.constantFrom(...SHOT_SIZES)),
  sets: fc.option(fc.uniqueArray(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 5 }).map((sets) => sets.sort((a, b) => a - b))),
  on: fc.option(fc.constantFrom("ramp-up", "working", "demonstration")),
  need: fc.constantFrom("must", "nice"),
  seconds: fc.option(fc.integer({ min: 0, max: 2400 }).map((halves) => halves / 4)),
  subject: subjects,
});

describe("a shot line", () => {
  it.each<[string, Partial<Shot>]>([
    ["Side, full, set 2, 12 s: the whole arm path", { angle: "side", size: "full", sets: [2], seconds: 12, subject: "the whole arm path" }],
    ["12 s, set 2, full, side: the whole arm path", { angle: "side", size: "full", sets: [2], seconds: 12, subject: "the whole arm path" }],
    ["3/4, wide: walking in", { angle: "three-quarter", size: "wide", subject: "walking in" }],
    ["profile, head to toe", { angle: "side", size: "full" }],
    ["from behind, waist up, sets 1-3, nice to have: shoulder blades", { angle: "rear", size: "medium", sets: [1, 2, 3], need: "nice", subject: "shoulder blades" }],
    ["Rear, sets 1, 3 and 5: elbows", { angle: "rear", sets: [1, 3, 5], subject: "elbows" }],
    ["front, ramp-up set: stance", { angle: "front", on: "ramp-up", subject: "stance" }],
    ["front, warm-up set 1: stance", { angle: "front", on: "ramp-up", sets: [1], subject: "stance" }],
    ["working sets 2-3, side: depth", { angle: "side", on: "working", sets: [2, 3], subject: "depth" }],
    ["Demo, floor level, close: foot", { angle: "low", on: "demonstration", size: "close-up", subject: "foot" }],
    ["Overhead, full: bar path", { angle: "high", size: "full", subject: "bar path" }],
    ["2nd set, side view: knees", { angle: "side", sets: [2], subject: "knees" }],
    ["side close-up 12 s", { angle: "side", size: "close-up", seconds: 12 }],
    ["front, 1:30: the whole circle", { angle: "front", seconds: 90, subject: "the whole circle" }],
    ["Side, set 2 - depth", { angle: "side", sets: [2], subject: "depth" }],
    ["front, 1 min: the whole circle", { angle: "front", seconds: 60, subject: "the whole circle" }],
  ])("reads %j", (text, shot) => {
    expect(parseShotLine(text)).toEqual({ ...nothing, ...shot });
  });

  it("takes insert for angle and size, unless one of them is stated", () => {
    expect(parseShotLine("Insert: grip")).toMatchObject({ angle: "insert", size: "insert" });
    expect(parseShotLine("Side, insert: grip")).toMatchObject({ angle: "side", size: "insert" });
    expect(parseShotLine("Insert, close-up: grip")).toMatchObject({ angle: "insert", size: "close-up" });
  });

  it("keeps a line without facts as it is", () => {
    for (const text of ["Knees over toes", "Hands: chalk first", "Warm-up: circles", "side view of the hips", ""]) {
      expect(parseShotLine(text)).toEqual({ ...nothing, subject: text });
    }
  });

  it("moves words before the colon that are no fact to the subject", () => {
    expect(parseShotLine("side, knees, set 2: path")).toEqual({ ...nothing, angle: "side", sets: [2], subject: "knees: path" });
  });

  it("keeps the first of two answers to one question", () => {
    expect(parseShotLine("side, front: knees")).toEqual({ ...nothing, angle: "side", subject: "front: knees" });
  });

  it("prints what it reads back as the same shot", () => {
    fc.assert(fc.property(shots, (shot) => {
      expect(parseShotLine(printShotLine(shot))).toEqual(shot);
    }), { numRuns: 2000 });
  });

  it("reads any text without throwing, and its print means the same", () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: "binary" }), subjects), (text) => {
      const shot = parseShotLine(text);
      expect(parseShotLine(printShotLine(shot))).toEqual(shot);
    }), { numRuns: 1000 });
  });

  it("prints the way a coach writes it", () => {
    expect(printShotLine(parseShotLine("12 s, working set 2, full, side: the arm"))).toBe("Side, full, working set 2, 12 s: the arm");
    expect(printShotLine({ ...nothing, subject: "side: is no angle here" })).toBe("Must: side: is no angle here");
  });
});
