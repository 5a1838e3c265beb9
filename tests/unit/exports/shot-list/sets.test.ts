import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, type Block } from "../../../../shared/episode";
import { blockInUnits, setsOf } from "../../../../shared/exports/shot-list/sets";

const block = (...texts: string[]): Block => {
  const newId = countingIds("s-");
  return emptyBlock(newId, "exercise", { sets: texts.map((text) => ({ id: newId(), role: "working" as const, text })) });
};
const told = (text: string, units: "kg" | "lb"): string => blockInUnits(block(text), units).sets[0]?.text ?? "";

describe("set lines in the unit asked for", () => {
  // 20 kg are 44.09 lb and 45 lb are 20.41 kg: 1 lb is 0.45359237 kg (international avoirdupois pound, 1959).
  it.each([
    ["3 x 10 @ 20 kg", "lb", "3 x 10 @ 44 lb"],
    ["3 x 10 @ 45 lb", "kg", "3 x 10 @ 20.5 kg"],
    ["3 x 8 @ 7.5 kg each hand, rest 60 s", "lb", "3 x 8 @ 17 lb each hand, rest 60 s"],
    ["3 x 8 @ 5 lb", "kg", "3 x 8 @ 2.5 kg"],
  ] as const)("tells %s in %s", (text, units, expected) => expect(told(text, units)).toBe(expected));

  it.each(["3x10 at 20kg", "3 x 10", "3 x 8 @ 80%", "3 x 12 bodyweight", "not a set line"])("keeps the coach's own words: %s", (text) => {
    expect(told(text, "kg")).toBe(text);
  });

  it("adds to bodyweight in the other unit", () => expect(told("3 x 5 @ BW + 10 kg", "lb")).toBe("3 x 5 @ BW + 22 lb"));

  it("gives planned sets, and each working line with its meaning in words; none for one that cannot be read", () => {
    const { planned, lines } = setsOf(block("2 x 8 @ 20 kg", "nonsense"), "lb");
    expect(planned.map(({ load }) => load)).toEqual(["44 lb", "44 lb"]);
    expect(lines).toEqual([{ printed: "2 x 8 @ 44 lb", readBack: "two sets of eight, 44 pounds", read: true }, { printed: "nonsense", readBack: "", read: false }]);
  });
});
