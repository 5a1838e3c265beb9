import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, type Block, type SetRole } from "../../../../shared/episode";
import { EXERCISES } from "../../../../shared/exercises";
import { countSets, muscleSets, SET_COUNTS, weeklyBand } from "../../../../shared/training";

const id = countingIds("volume-");
const block = (exercise: string | null, ...sets: readonly (readonly [SetRole, string])[]): Block =>
  emptyBlock(id, "exercise", { exercise, sets: sets.map(([role, text]) => ({ id: id(), role, text })) });
const press = EXERCISES.find((one) => one.indirect.includes("triceps"))?.id ?? "";
const extension = EXERCISES.find((one) => one.direct.includes("triceps"))?.id ?? "";

describe("sets per muscle", () => {
  it("adds direct and indirect sets up over the blocks, ramp-up sets left out", () => {
    const blocks = [block(press, ["working", "4 x 8"]), block(extension, ["working", "3 x 12"], ["ramp-up", "2 x 8"])];
    expect(muscleSets({ blocks }).find((one) => one.muscle === "triceps")).toEqual({ muscle: "triceps", direct: 3, indirect: 4, counted: 5 });
  });

  it("lists most first, ties by what is direct and then by name", () => {
    const rows = muscleSets({ blocks: [block(press, ["working", "4 x 8"]), block(extension, ["working", "3 x 12"])] });
    const sorted = [...rows].sort((a, b) => b.counted - a.counted || b.direct - a.direct || (a.muscle < b.muscle ? -1 : 1));
    expect(rows.length).toBeGreaterThan(2);
    expect(rows).toEqual(sorted);
  });

  it.each([["an exercise it does not know", block("no-such-exercise", ["working", "3 x 5"])], ["a block without an exercise", block(null, ["working", "3 x 5"])], ["a line it cannot read", block(press, ["working", "a few"])]])("counts nothing for %s", (_, one) => {
    expect(muscleSets({ blocks: [one] })).toEqual([]);
  });
});

describe("counting sets", () => {
  it("gives the same number every way when no set is indirect", () => {
    for (const way of SET_COUNTS) expect(countSets(6, 0, way)).toBe(6);
  });

  it("counts fractionally unless told otherwise", () => expect(countSets(0, 5)).toBe(2.5));
});

describe("the weekly band", () => {
  it.each([[0, "under 5"], [4.5, "under 5"], [5, "5 to 9"], [9.5, "5 to 9"], [10, "10 or more"]])("puts %d sets into the band %s", (sets, band) => expect(weeklyBand(sets)).toBe(band));

  it("refuses what is no number of sets", () => {
    expect(() => weeklyBand(-1)).toThrow(new RangeError("Sets in a week are a number from 0, not -1"));
    expect(() => weeklyBand(Number.NaN)).toThrow(RangeError);
  });
});
