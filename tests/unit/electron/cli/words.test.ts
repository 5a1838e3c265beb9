import { describe, expect, it } from "vitest";
import { clockTime, count, table } from "../../../../electron/cli/words";

describe("what the command line says", () => {
  it.each([[0, "0:00"], [59.6, "1:00"], [247, "4:07"], [3599.4, "59:59"], [3599.6, "1:00:00"], [3750, "1:02:30"]])("%d seconds are %s", (seconds, words) => {
    expect(clockTime(seconds)).toBe(words);
  });

  it("counts one thing and several", () => {
    expect([count(1, "word"), count(0, "word"), count(2, "match", "matches")]).toEqual(["1 word", "0 words", "2 matches"]);
  });

  it("lines columns up", () => {
    expect(table([["", "gym"], ["Warm-up", "8:00"], ["Row", "12:00"]])).toBe("           gym\nWarm-up   8:00\nRow      12:00\n");
  });
});
