import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ANGLES } from "../../../shared/exercises";
import { FRAMES, focalLength, SHOT_SIZES, standFor, STEP_METRES, USUAL_SETUP, type FilmingSetup, type ShotSize, type Stand } from "../../../shared/filming";

const stand = (size: ShotSize, own: Partial<FilmingSetup> & { angle?: (typeof ANGLES)[number] } = {}): Stand =>
  standFor({ ...USUAL_SETUP, angle: "side", ...own, size });

const setups = fc.record({
  size: fc.constantFrom(...SHOT_SIZES),
  angle: fc.constantFrom(...ANGLES),
  aspect: fc.constantFrom("16:9" as const, "9:16" as const, "both" as const),
  lens: fc.constantFrom("ultra-wide" as const, "main" as const, "tele" as const),
  stature: fc.double({ min: 1.3, max: 2.1, noNaN: true }),
  position: fc.constantFrom("standing" as const, "seated" as const, "half-kneeling" as const, "lying face up" as const, "hanging" as const, "plank" as const, "walking" as const),
});

describe("where the camera stands", () => {
  it("frames a standing coach head to toe from a few steps, level with the hip", () => {
    // by hand: frame height 1.75 / 0.85 = 2.059 m; 26 mm x 2.059 m / 20.25 mm = 2.64 m
    expect(stand("full")).toEqual({ distance: 2.6, height: 0.9, tilt: 0, steps: 3.5, level: "hip" });
  });

  it("turns the phone upright and comes closer for a standing body, farther for a lying one", () => {
    expect(stand("full", { aspect: "9:16" }).distance).toBeLessThan(stand("full").distance);
    expect(stand("full", { aspect: "9:16", position: "lying face up" }).distance).toBeGreaterThan(stand("full", { position: "lying face up" }).distance);
  });

  it("keeps a lying body lengthwise in frame", () => {
    // by hand: 2.0 / 0.9 = 2.222 m across 36 mm; 26 x 2.222 / 36 = 1.60 m
    expect(stand("full", { position: "lying face up" })).toMatchObject({ distance: 1.6, tilt: 0 });
  });

  it("looks down from a high mark and up from a low one", () => {
    expect(stand("full", { angle: "high" }).tilt).toBeLessThan(0);
    expect(stand("full", { angle: "low" }).tilt).toBeGreaterThan(0);
    expect(stand("full", { angle: "low" }).height).toBe(0.2);
    expect(stand("full", { angle: "high" }).level).toBe("above the head");
  });

  it("takes a shot that names nothing as full, from the side", () => {
    expect(standFor({ ...USUAL_SETUP, angle: null, size: null })).toEqual(stand("full"));
  });

  it("is nearer for every tighter size", () => {
    for (const aspect of ["16:9", "9:16"] as const) {
      const distances = (["wide", "full", "medium", "close-up", "insert"] as const).map((size) => stand(size, { aspect }).distance);
      expect(distances).toEqual([...distances].sort((a, b) => b - a));
    }
  });

  it("stands as far for both versions as for the stricter one", () => {
    fc.assert(fc.property(setups, (setup) => {
      expect(standFor({ ...setup, aspect: "both" }).distance).toBeGreaterThanOrEqual(standFor({ ...setup, aspect: "16:9" }).distance - 0.1);
    }));
  });

  it("always gives a mark a person can tape: near the floor to overhead, never steeper than 45 degrees", () => {
    fc.assert(fc.property(setups, (setup) => {
      const { distance, height, tilt, steps } = standFor(setup);
      expect(distance).toBeGreaterThan(0);
      expect(height).toBeGreaterThanOrEqual(0.2);
      expect(height).toBeLessThanOrEqual(2.2);
      expect(Math.abs(tilt)).toBeLessThanOrEqual(45);
      expect(Math.abs(steps * STEP_METRES - distance)).toBeLessThan(STEP_METRES / 2 + 0.001);
      expect([distance, height].every((metres) => Math.abs(metres * 10 - Math.round(metres * 10)) < 1e-9)).toBe(true);
      expect(steps * 2).toBe(Math.round(steps * 2));
    }));
  });

  it("holds a full or wide body inside the picture with head-room, seen along the line of sight", () => {
    const level = fc.constantFrom("front" as const, "three-quarter" as const, "side" as const, "rear" as const);
    fc.assert(fc.property(setups, level, fc.constantFrom("full" as const, "wide" as const), (anySetup, angle, size) => {
      const setup = { ...anySetup, angle, size, position: "standing" as const };
      const { distance, height, tilt } = standFor(setup);
      expect(tilt).toBe(0);
      const seen = (distance * FRAMES[setup.aspect].tall) / focalLength(setup.lens);
      // rounding to 0.1 m of distance and height moves an edge by this much at most
      const slack = 0.05 + (0.05 * FRAMES[setup.aspect].tall) / focalLength(setup.lens) / 2;
      expect(height + seen / 2).toBeGreaterThan(setup.stature + 0.07 * seen - slack);
      expect(height - seen / 2).toBeLessThan(slack);
    }), { numRuns: 500 });
  });

  it("scales with the person", () => {
    expect(stand("full", { stature: 1.95 }).distance).toBeGreaterThan(stand("full", { stature: 1.55 }).distance);
  });

  it("refuses a stature or a lens that is none", () => {
    expect(() => stand("full", { stature: 0 })).toThrow("Stature is a positive number of metres; 0 is not.");
    expect(() => stand("full", { lens: Number.NaN })).toThrow("A focal length is a positive number of millimetres; NaN is not.");
  });
});
