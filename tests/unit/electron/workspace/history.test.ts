import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MAX_STATES, freeTime, stateName, stateTime, statesToDrop } from "../../../../electron/workspace/history";

const at = (ms: number): string => stateName(new Date(ms), "0123456789abcdef");
const MINUTE = 60_000;

describe("the time of a state", () => {
  it("is the next free millisecond when another state has it, so that states stay in order", () => {
    const day = Date.parse("2027-03-04T06:45:00.999Z");
    expect(freeTime([at(day), at(day + 1), at(day + 5)], new Date(day))).toEqual(new Date("2027-03-04T06:45:01.001Z"));
    expect(freeTime([at(day)], new Date(day - 1))).toEqual(new Date(day - 1));
  });
});

describe("the name of an older state", () => {
  it("is when it was saved and the start of its stamp", () => {
    expect(stateName(new Date("2027-03-04T06:45:00.120Z"), "abcdef0123456789")).toBe("20270304T064500120Z-abcdef012345");
  });

  it("gives its time back", () => {
    fc.assert(fc.property(fc.date({ min: new Date("1970-01-01"), max: new Date("2200-01-01"), noInvalidDate: true }), (date) => {
      expect(stateTime(stateName(date, "0123456789ab"))).toBe(date.toISOString());
    }));
  });

  it.each(["", "x", "../20270304T064500120Z-abcdef012345", "20270304T064500120Z-abcdef01234g", "20270304T064500120Z-abcdef012345.json"])("is not %j", (name) => {
    expect(stateTime(name)).toBeNull();
  });
});

describe("letting older states go", () => {
  it("drops nothing while there is room", () => {
    expect(statesToDrop(Array.from({ length: MAX_STATES }, (_, i) => at(i * MINUTE)))).toEqual([]);
  });

  it("thins out a burst of saves and keeps the lone state of last month", () => {
    const month = at(0);
    const burst = Array.from({ length: 70 }, (_, i) => at(30 * 24 * 60 * MINUTE + i * 1000));
    const dropped = statesToDrop([month, ...burst]);
    expect(dropped).toHaveLength(21);
    expect(dropped).not.toContain(month);
  });

  it("always leaves the allowed number, the oldest and the newest twelve", () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 1e12 }), { minLength: 51, maxLength: 90 }), (times) => {
      const states = times.sort((a, b) => a - b).map(at);
      const dropped = new Set(statesToDrop(states));
      const kept = states.filter((state) => !dropped.has(state));
      expect(kept).toHaveLength(MAX_STATES);
      expect(kept[0]).toBe(states[0]);
      expect(kept.slice(-12)).toEqual(states.slice(-12));
    }));
  });
});
