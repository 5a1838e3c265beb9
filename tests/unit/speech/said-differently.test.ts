import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saidDifferently, spokenForm } from "../../../shared/speech";

describe("what is said otherwise than it is written", () => {
  it.each<[string, [string, string][]]>([
    ["Stand tall and breathe.", []],
    ["Do 3x8-10 with 42.5 kg, then rest.", [["3x8-10", "three sets of eight to ten"], ["42.5 kg", "forty-two point five kilos"]]],
    ["Rest 90 s. / Then 10/side.", [["90 s", "ninety seconds"], ["10/side", "ten per side"]]],
    ["e.g. a KB", [["e.g", "for example"], ["KB", "kettlebell"]]],
    ["", []],
  ])("%s", (text, pairs) => {
    expect(saidDifferently(text).map(({ written, said }) => [written, said])).toEqual(pairs);
  });

  it("can be corrected piece by piece", () => {
    const own = [{ written: "3x8-10", said: "three by eight to ten" }];
    expect(saidDifferently("Do 3x8-10 now", own)).toEqual(own);
    expect(spokenForm("Do 3x8-10 now", own)).toBe("Do three by eight to ten now");
  });

  it("is nothing for text already in words", () => {
    const words = fc.array(fc.constantFrom("push", "the", "floor,", "away.", "Stand", "tall", "/", "forty-two"), { maxLength: 20 }).map((list) => list.join(" "));
    fc.assert(fc.property(words, (text) => {
      expect(saidDifferently(text)).toEqual([]);
    }));
  });
});
