import { describe, expect, it } from "vitest";
import { convertLoad } from "../../../shared/exports/loads";
import { loadInWords } from "../../../shared/exports/handout/words";
import { inUnits } from "../../../shared/exports/shot-list/sets";

describe("loads in the other unit", () => {
  // 1 lb is 0.45359237 kg (international avoirdupois pound, 1959).
  it.each([[20, "lb", 44], [3, "lb", 6.5], [50, "kg", 22.5], [45, "kg", 20.5], [-20, "lb", -44], [0, "kg", 0]] as const)("%s is %s %s", (value, to, expected) => {
    expect(convertLoad(value, to)).toBe(expected);
  });

  it("name the same weight on the shot list and on the handout", () => {
    for (let value = 1; value <= 120; value++) {
      const load = { value, unit: "lb" } as const;
      expect(loadInWords(load, "kg")).toBe(`about ${inUnits({ sets: 1, load }, "kg").load?.value} kg`);
    }
  });
});
