import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saidDifferently, spokenForm } from "../../../shared/speech";

describe("what is said otherwise than it is written", () => {
  it.each<[string, [string, string][]]>([
    ["Stand tall and breathe.", []],
    ["Do 3x8-10 with 42.5 kg, then rest.", [["3x8-10", "three sets of eight to ten"], ["42.5 kg", "forty-two point five kilos"]]],
    ["Rest 90 s. / Then 10/side.", [["90 s", "ninety seconds"], ["10/side", "ten per side"]]],
    ["e.g. a KB", [["e.g", "for example"], ["KB", "kettlebell"]]],
    ["Do 3x8-10 @ 40 kg, tempo 3-1-1-0, RIR 2, £1,250.50, 2nd, 1/2, 10% … lbs now.", [
      ["3x8-10 @ 40 kg", "three sets of eight to ten at forty kilos"], ["3-1-1-0", "three one one zero"], ["RIR 2", "two reps in reserve"], ["£1,250.50", "one thousand two hundred fifty pounds fifty"],
      ["2nd", "second"], ["1/2", "half"], ["10%", "ten percent"], ["lbs", "pounds"],
    ]],
    ["In 2024, 5 kg, 8-10.", [["2024", "twenty twenty-four"], ["5 kg", "five kilos"], ["8-10", "eight to ten"]]],
    ["3x8 / 42.5 kg: RPE 8", [["3x8", "three sets of eight"], ["42.5 kg", "forty-two point five kilos"], ["RPE 8", "R P E eight"]]],
    ["", []],
  ])("%s", (text, pairs) => {
    expect(saidDifferently(text).map(({ written, said }) => [written, said])).toEqual(pairs);
  });

  it("can be corrected piece by piece", () => {
    const own = [{ written: "3x8-10", said: "three by eight to ten" }];
    expect(saidDifferently("Do 3x8-10 now", own)).toEqual(own);
    expect(spokenForm("Do 3x8-10 now", own)).toBe("Do three by eight to ten now");
  });

  it("can be corrected where pieces follow each other without a word between", () => {
    const own = [{ written: "2nd", said: "number two" }];
    expect(saidDifferently("Do 3x8, 2nd, 10%.", own)).toEqual([{ written: "3x8", said: "three sets of eight" }, ...own, { written: "10%", said: "ten percent" }]);
  });

  it("keeps every word, however the pieces are cut", () => {
    const parts = fc.array(fc.constantFrom("3x8,", "2nd,", "10%", "42.5 kg,", "1/2", "…", "the", "RIR 2,", "8-10", "/", "lbs,", "floor,"), { maxLength: 12 }).map((list) => list.join(" "));
    fc.assert(fc.property(parts, (text) => {
      for (const { written, said } of saidDifferently(text)) expect([written, said]).not.toContain("");
      const said = spokenForm(text).toLowerCase().replace(/[^a-z ]+/g, " ");
      for (const piece of saidDifferently(text)) for (const word of piece.said.toLowerCase().split(/[^a-z]+/).filter(Boolean)) expect(said).toContain(word);
    }));
  });

  it("is nothing for text already in words", () => {
    const words = fc.array(fc.constantFrom("push", "the", "floor,", "away.", "Stand", "tall", "/", "forty-two"), { maxLength: 20 }).map((list) => list.join(" "));
    fc.assert(fc.property(words, (text) => {
      expect(saidDifferently(text)).toEqual([]);
    }));
  });
});
