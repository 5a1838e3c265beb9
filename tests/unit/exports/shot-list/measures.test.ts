import { describe, expect, it } from "vitest";
import { emptyBlock, emptyEpisode, countingIds } from "../../../../shared/episode";
import { clockTime, dateInWords, holdInWords } from "../../../../shared/exports/shot-list/measures";
import { metres, stepsInWords, tiltInWords } from "../../../../shared/filming";

const stand = { distance: 2.9, height: 1, tilt: 0, steps: 4, level: "hip" };

describe("measures in words", () => {
  it.each([[4, "4 steps"], [2.5, "2½ steps"], [1, "1 step"], [0.5, "½ step"], [1.5, "1½ steps"]])("says %s steps as %s", (steps, words) => {
    expect(stepsInWords(steps)).toBe(words);
  });

  it.each([["06:45", 0, "06:45"], ["06:45", 540, "06:54"], ["23:50", 1200, "00:10"], ["06:45", 89, "06:46"]])("adds to %s the seconds %s", (start, seconds, time) => {
    expect(clockTime(start, seconds)).toBe(time);
  });

  it("writes a date in words whatever the machine's language", () => {
    // Weekday from memory of the calendar: 29 February 2028 is a Tuesday.
    expect(dateInWords("2028-02-29")).toBe("Tuesday 29 February 2028");
    expect(dateInWords("2027-03-04")).toBe("Thursday 4 March 2027");
  });

  it("writes metres to the tenth", () => expect(metres(3)).toBe("3.0 m"));

  it("says how the phone leans", () => {
    expect(tiltInWords(stand.tilt)).toBe("level");
    expect(tiltInWords(-29)).toBe("29° down");
    expect(tiltInWords(18)).toBe("18° up");
  });

  it("says how the phone is held for each format, and that it is level only when every mark is", () => {
    const block = emptyBlock(countingIds("b"), "exercise");
    const of = (aspect: "16:9" | "9:16" | "both", tilt: number) =>
      holdInWords(emptyEpisode(countingIds("e"), { video: { targetSeconds: 60, frameRate: "30", aspect } }), block, [{ letter: "A", key: "side full", angle: "side", size: "full", shots: [], stand: { ...stand, tilt } }]);
    expect(of("16:9", 0)).toBe("Main lens, phone across (landscape), level.");
    expect(of("9:16", -29)).toBe("Main lens, phone upright (portrait).");
    expect(of("both", 0)).toContain("inside the upright strip in the middle");
  });
});
