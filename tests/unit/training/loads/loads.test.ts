import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  IMPERIAL_PLATES, increase, kgToLb, lbToKg, loadForReps, METRIC_PLATES, ONE_REP_MAX_FORMULAS, oneRepMax, percentForReps, platesPerSide, rampUp, repsForPercent,
  rirForRpe, roundLoad, rpePercent, twoForTwo,
} from "../../../../shared/training";

const formula = fc.constantFrom(...ONE_REP_MAX_FORMULAS);

describe("one-rep max", () => {
  it("is undone by its inverse", () => {
    fc.assert(fc.property(formula, fc.double({ min: 1, max: 500, noNaN: true }), fc.integer({ min: 1, max: 12 }), (name, load, reps) => {
      expect(loadForReps(name, oneRepMax(name, load, reps), reps)).toBeCloseTo(load, 9);
    }));
  });

  it("never falls as the reps rise", () => {
    for (const name of ONE_REP_MAX_FORMULAS) for (let reps = 2; reps <= 12; reps++) expect(oneRepMax(name, 100, reps)).toBeGreaterThan(oneRepMax(name, 100, reps - 1));
  });

  it.each([[100, 0, "Reps for an estimate are a whole number from 1 to 12, not 0"], [100, 2.5, "Reps for an estimate are a whole number from 1 to 12, not 2.5"], [100, 13, "Reps for an estimate are a whole number from 1 to 12, not 13"], [0, 5, "A load is a number above 0, not 0"], [Number.NaN, 5, "A load is a number above 0, not NaN"]])("refuses %d for %d reps", (load, reps, message) => {
    expect(() => oneRepMax("Epley", load, reps)).toThrow(new RangeError(message));
  });
});

describe("percent tables", () => {
  it("finds the reps of each percent it gives", () => {
    for (const reps of [1, 5, 8, 15]) expect(repsForPercent(percentForReps(reps) ?? 0)).toBe(reps);
    expect([percentForReps(14), percentForReps(0), repsForPercent(99)]).toEqual([null, null, null]);
  });

  it.each([[11, 10, "The chart ends at 10 reps done and in reserve together, not 11"], [5, 5, "Reps in reserve follow from RPE 6 to 10, not 5"], [5, 8.3, "RPE goes in halves, not 8.3"], [0, 8, "Reps are a whole number from 1, not 0"]])("refuses %d reps at RPE %d", (reps, rpe, message) => {
    expect(() => rpePercent(reps, rpe)).toThrow(new RangeError(message));
  });

  it("asks for less load as reps or reserve rise", () => {
    for (let reps = 1; reps < 6; reps++) for (let rpe = 6.5; rpe <= 10; rpe += 0.5) {
      expect(rpePercent(reps + 1, rpe)).toBeLessThan(rpePercent(reps, rpe));
      expect(rpePercent(reps, rpe - 0.5)).toBeLessThan(rpePercent(reps, rpe));
    }
    expect(rirForRpe(8.5)).toBe(1.5);
  });
});

describe("rounding to what the gym has", () => {
  it.each([[83.5, 2.5, 82.5], [83.75, 2.5, 82.5], [83.76, 2.5, 85], [0.15, 0.1, 0.1], [60, 2.5, 60], [1.2, 2.5, 0]])("rounds %d in steps of %d to %d", (load, step, wanted) => expect(roundLoad(load, step)).toBe(wanted));

  it("stays within half a step", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 400, noNaN: true }), fc.constantFrom(0.5, 1, 1.25, 2, 2.5, 5), (load, step) => {
      expect(Math.abs(roundLoad(load, step) - load)).toBeLessThanOrEqual(step / 2 + 0.001);
    }));
  });

  it("refuses a step of nothing", () => expect(() => roundLoad(60, 0)).toThrow(new RangeError("A step is a number above 0, not 0")));
});

describe("plates", () => {
  /** Fewest plates by trying everything: the slow truth. */
  function fewest(side: number, plates: readonly number[], stock: readonly number[]): number {
    if (Math.abs(side) < 1e-9) return 0;
    const [plate, ...rest] = plates;
    const [pairs = 0, ...restStock] = stock;
    if (plate === undefined) return Infinity;
    let best = Infinity;
    for (let used = 0; used <= pairs && used * plate <= side + 1e-9; used++) best = Math.min(best, used + fewest(side - used * plate, rest, restStock));
    return best;
  }

  it("is fewest and exact against trying everything, with an inventory", () => {
    const plates = [20, 15, 10, 5, 2.5, 1.25];
    fc.assert(fc.property(fc.integer({ min: 0, max: 64 }), fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 6, maxLength: 6 }), (steps, pairs) => {
      const side = steps * 1.25;
      const found = platesPerSide(20 + 2 * side, 20, 0, plates.map((weight, at) => ({ weight, pairs: pairs[at] ?? 0 })));
      const best = fewest(side, plates, pairs);
      expect(found === null ? Infinity : found.length).toBe(best);
      if (found === null) return;
      expect(found.reduce((sum, plate) => sum + plate, 0)).toBeCloseTo(side, 9);
      expect(found).toEqual([...found].sort((a, b) => b - a));
      plates.forEach((weight, at) => expect(found.filter((plate) => plate === weight).length).toBeLessThanOrEqual(pairs[at] ?? 0));
    }));
  });

  it("answers the edges", () => {
    expect(platesPerSide(20, 20, 0, METRIC_PLATES)).toEqual([]);
    expect(platesPerSide(15, 20, 0, METRIC_PLATES)).toBeNull();
    expect(platesPerSide(60, 20, 0, [])).toBeNull();
    expect(platesPerSide(Number.NaN, 20, 0, METRIC_PLATES)).toBeNull();
    expect(platesPerSide(45 + 2 * 62.5, 45, 0, IMPERIAL_PLATES)).toEqual([35, 25, 2.5]);
  });
});

describe("ramp-up and raises", () => {
  it("starts from the bar and never repeats or reaches the work load", () => {
    expect(rampUp(30, { bar: 20, step: 2.5 })).toEqual([{ load: 20, reps: 8 }, { load: 25, reps: 2 }]);
    expect(rampUp(20, { bar: 20, step: 2.5 })).toEqual([]);
    expect(rampUp(4, { bar: null, step: 2 })).toEqual([{ load: 2, reps: 5 }]);
    fc.assert(fc.property(fc.integer({ min: 1, max: 300 }), fc.constantFrom(null, 10, 20), fc.constantFrom(1, 2, 2.5, 5), (work, bar, step) => {
      const loads = rampUp(work, { bar, step }).map((set) => set.load);
      loads.forEach((load, at) => {
        expect(load).toBeLessThan(work);
        expect(load).toBeGreaterThan(loads[at - 1] ?? 0);
        expect(load).toBeGreaterThanOrEqual(bar ?? 0);
      });
    }));
  });

  it("offers the loads inside the raise and says when there is none", () => {
    expect(increase(100, 5)).toEqual({ min: 102, max: 110, loads: [105, 110] });
    expect(increase(10, 2).loads).toEqual([]);
    expect(() => increase(-5)).toThrow(new RangeError("A load is a number above 0, not -5"));
  });

  it("looks at the two newest sessions only", () => {
    expect(twoForTwo(10, [12, 9, 12, 13])).toBe("raise");
    expect(twoForTwo(10, [14])).toBe("keep");
    expect(twoForTwo(10, [])).toBe("keep");
  });

  it("turns pounds into kilograms and back", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (kg) => {
      expect(lbToKg(kgToLb(kg))).toBeCloseTo(kg, 9);
    }));
  });
});
