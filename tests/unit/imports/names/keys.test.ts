import { describe, expect, it } from "vitest";
import { keyOf, keyOfTitle, nameByKey, NAMES } from "../../../../shared/imports/names/lexicon";

describe("keys of exercises", () => {
  it("gives every name back that has one", () => {
    for (const name of NAMES) {
      const again = nameByKey(keyOf(name));
      expect([name.title, again?.exercise?.id ?? null]).toEqual([name.title, name.exercise?.id ?? null]);
    }
  });
  it.each([
    ["goblet-squat", "goblet-squat"],
    ['"Goblet squats"', "goblet-squat"],
    ['"Turkish get-up"', '"turkish get up"'],
    ['"no such exercise"', '"no such exercise"'],
  ])("%s is known by %s", (title, key) => {
    expect(keyOfTitle(title)).toBe(key);
  });
  it("spells a name that nothing knows, and has none for an unknown id", () => {
    expect(nameByKey('"no such exercise"')?.title).toBe("No such exercise");
    expect(nameByKey("no-such-exercise")).toBeNull();
  });
});
