import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ranOn, type TimedReading } from "../../../shared/speech";

const START = Date.parse("2027-03-04T10:00:00Z");
/** A tapped reading that ended some seconds after ten. */
const tapped = (id: string, end: number, seconds: number | null, file: string | null = null): TimedReading => ({ id, file, seconds, at: new Date(START + end * 1000).toISOString() });

describe("a tap that ends a line", () => {
  it.each<[string, boolean, TimedReading]>([
    ["began the next where that is as long as the time between", true, tapped("b", 7, 3)],
    ["began the next though the host noted it a moment later", true, tapped("b", 7.3, 3)],
    ["began nothing where the next was begun later", false, tapped("b", 9, 3)],
    ["began nothing where the next was broken off", false, tapped("b", 7, null)],
    ["began nothing where the next was recorded", false, tapped("b", 7, 3, "b.wav")],
    ["did not begin its own line", false, tapped("a", 4, 0)],
  ])("%s", (_name, runs, next) => {
    const first = tapped("a", 4, 4);
    expect(ranOn(first, [first, next])).toBe(runs);
  });

  it("is no tap where the line was recorded", () => {
    const first = tapped("a", 4, 4, "a.wav");
    expect(ranOn(first, [first, tapped("b", 7, 3)])).toBe(false);
  });

  it("is told for every line but the last of any read on and on, and for none read with a rest after it", () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 500, max: 20_000 }), { minLength: 1, maxLength: 12 }), fc.integer({ min: 401, max: 499 }), (lengths, rest) => {
      const at = (gap: number) => lengths.map((_, i) => tapped(String(i), lengths.slice(0, i + 1).reduce((sum, one) => sum + one + gap, 0) / 1000, (lengths[i] ?? 0) / 1000));
      const [runs, stops] = [at(0), at(rest)];
      expect(runs.map((one) => ranOn(one, runs))).toEqual(lengths.map((_, i) => i < lengths.length - 1));
      expect(stops.map((one) => ranOn(one, stops))).toEqual(lengths.map(() => false));
    }));
  });
});
