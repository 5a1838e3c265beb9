import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clock, minutes, readClock, seconds } from "../../../renderer/words/clock";
import { count, listed } from "../../../renderer/words/count";

describe("clock", () => {
  it.each([[0, "0:00"], [47.6, "0:48"], [580, "9:40"], [600, "10:00"], [3725, "1:02:05"], [3599.6, "1:00:00"]])("writes %d s as %s", (value, text) => {
    expect(clock(value)).toBe(text);
  });

  it("is read back to the second", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 36_000 }), (value) => { expect(readClock(clock(value))).toBe(value); }));
  });
});

describe("readClock", () => {
  it.each([["95", 95], ["1:35", 95], ["9:5", 545], ["1:02:05", 3725], ["12,5", 12.5], [" 90 s ", 90], ["2 min", 120], ["90 seconds", 90]])("reads %s", (text, value) => {
    expect(readClock(text)).toBe(value);
  });

  it.each(["", "soon", "1:75", "-4", "1:2:3:4", "1:", "4 kg"])("refuses %j", (text) => {
    expect(readClock(text)).toBeNull();
  });
});

describe("minutes", () => {
  it.each([[0, "0"], [20, "<1"], [30, "1"], [750, "13"]])("writes %d s as %s", (value, text) => {
    expect(minutes(value)).toBe(text);
  });
});

describe("seconds", () => {
  it("keeps one decimal below ten", () => {
    expect([seconds(5.94), seconds(5), seconds(11.4)]).toEqual(["5.9", "5", "11"]);
  });
});

describe("words with numbers", () => {
  it("counts", () => {
    expect([count(0, "block"), count(1, "block"), count(3, "block"), count(2, "take of", "takes of")]).toEqual(["no blocks", "1 block", "3 blocks", "2 takes of"]);
  });

  it("lists", () => {
    expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual(["", "a", "a and b", "a, b and c"]);
  });
});
