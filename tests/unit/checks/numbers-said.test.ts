import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { numbersSaid } from "../../../shared/checks/numbers-said";
import { numberWords } from "../../../shared/speech";

const values = (text: string): number[] => numbersSaid(text).map(({ value }) => value);

describe("numbers in speech", () => {
  it.each([
    ["Three sets of eight to ten", [3, 8, 10]], ["Take twenty-four kilos", [24]], ["seven and a half kilos", [7.5]], ["two point five", [2.5]],
    ["a hundred and twenty kilos", [120]], ["22.5 kg, 3 sets", [22.5, 3]], ["someone often weighs", []], ["3x10", []], ["twenty five", [25]], ["Ninety seconds", [90]],
  ] as const)("%s", (text, expected) => {
    expect(values(text)).toEqual(expected);
  });

  it("reads back every whole number below a hundred as speech writes it", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 99 }), (value) => {
      expect(values(`Do ${numberWords(value)} of them`)).toEqual([value]);
    }));
  });

  it("points at the words", () => {
    const text = "Rest for ninety seconds";
    expect(numbersSaid(text).map(({ start, end }) => text.slice(start, end))).toEqual(["ninety"]);
  });
});
