import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, type Block, type CarryOver, type SetRole } from "../../../../shared/episode";
import { EXERCISES } from "../../../../shared/exercises";
import { parseSetLine, rampOf, weightChange, weightIn, workWeight } from "../../../../shared/training";

const id = countingIds("weights-");
const block = (exercise: string, ...sets: readonly (readonly [SetRole, string])[]): Block =>
  emptyBlock(id, "exercise", { exercise, sets: sets.map(([role, text]) => ({ id: id(), role, text })) });
const row = block("chest-supported-row", ["ramp-up", "1 x 8 @ 30 kg each hand"], ["working", "3 x 8-10 @ 22 kg each hand, rest 90 s"]);
const last = (sets: string, ...lifted: readonly (number | null)[]): CarryOver =>
  ({ exercise: "chest-supported-row", sets, actuals: lifted.map((load, at) => ({ set: at + 1, load, reps: 10, rir: 2 })), note: "" });

describe("the weight of a set line", () => {
  it.each(["3 x 10 @ bodyweight", "3 x 10 @ BW + 10 kg", "3 x 5 @ 80%", "3 x 12 @ band", "3 x 8", "not a set line"])("is none in %s", (line) => expect(weightIn(line)).toBeNull());

  it("is the heaviest of a block's working sets, whatever the unit", () => {
    expect(workWeight(row)).toEqual({ value: 22, unit: "kg", perHand: true });
    expect(workWeight(block("goblet-squat", ["working", "1 x 10 @ 45 lb"], ["working", "2 x 8 @ 24 kg"]))).toEqual({ value: 24, unit: "kg" });
    expect(workWeight(block("goblet-squat", ["ramp-up", "1 x 10 @ 12 kg"], ["working", "3 x 8"]))).toBeNull();
  });
});

describe("today against last time", () => {
  it.each([["20", 2, 10, false], ["22", 0, 0, false], ["24", -2, -8.333, false], ["16", 6, 37.5, true]])("compares 22 kg with %s", (before, change, percent, beyond) => {
    const compared = weightChange(row, last(`3 x 8-10 @ ${before} kg each hand`));
    expect(compared).toMatchObject({ now: { value: 22 }, before: { value: Number(before) }, change, beyondRecommended: beyond });
    expect(compared?.percent).toBeCloseTo(percent, 3);
  });

  it("goes by what was lifted where that was written down", () => {
    expect(weightChange(row, last("3 x 8-10 @ 20 kg each hand", 18, null, 16))).toMatchObject({ before: { value: 18, unit: "kg", perHand: true }, change: 4 });
    expect(weightChange(row, last("3 x 8-10 @ 20 kg each hand", null))).toMatchObject({ before: { value: 20 } });
  });

  it.each(["3 x 8-10 @ 44 lb each hand", "3 x 8-10 @ 20 kg", "3 x 10 @ bodyweight", "not a set line"])("does not compare with %s", (sets) => {
    expect(weightChange(row, last(sets))).toBeNull();
  });

  it("does not compare a block without a weight", () => expect(weightChange(block("chest-supported-row", ["working", "3 x 8"]), last("3 x 8 @ 20 kg each hand"))).toBeNull());
});

describe("the ramp of a block", () => {
  it("goes up in dumbbell steps", () => {
    expect(rampOf(row)).toMatchObject({
      step: 2, sets: [{ load: 8, reps: 5 }, { load: 14, reps: 3 }, { load: 18, reps: 2 }],
      lines: ["1 x 5 @ 8 kg each hand, rest 60 s", "1 x 3 @ 14 kg each hand, rest 60 s", "1 x 2 @ 18 kg each hand, rest 60 s"],
    });
  });

  it("begins with the empty bar where there is one", () => {
    const barbell = EXERCISES.find((one) => one.rampUp && one.equipment.includes("barbell"))?.id ?? "";
    expect(rampOf(block(barbell, ["working", "3 x 5 @ 100 kg"]))?.sets[0]).toEqual({ load: 20, reps: 8, percent: 20 });
    expect(rampOf(block(barbell, ["working", "3 x 5 @ 225 lb"]))?.sets[0]).toEqual({ load: 45, reps: 8, percent: 20 });
    expect(rampOf(block(barbell, ["working", "3 x 5 @ 20 kg"]))).toBeNull();
  });

  it("is written as set lines that read back as the same sets, below the working weight", () => {
    const heavy = fc.constantFrom(...EXERCISES.filter((one) => one.rampUp).map((one) => one.id));
    fc.assert(fc.property(heavy, fc.integer({ min: 1, max: 400 }), fc.constantFrom("kg", "lb", "kg each hand"), (exercise, value, unit) => {
      const ramp = rampOf(block(exercise, ["working", `3 x 5 @ ${value} ${unit}`]));
      for (const [at, line] of (ramp?.lines ?? []).entries()) {
        const set = ramp?.sets[at];
        expect(parseSetLine(line)).toMatchObject({ ok: true, scheme: { sets: 1, repsMin: set?.reps, load: { value: set?.load } } });
        expect(set?.percent).toBeLessThan(100);
      }
    }));
  });

  it("is none without a weight, and none for an exercise that needs none", () => {
    const light = EXERCISES.find((one) => !one.rampUp)?.id ?? "";
    expect(rampOf(block("chest-supported-row", ["working", "3 x 8 @ RPE 7"]))).toBeNull();
    expect(rampOf(block(light, ["working", "3 x 8 @ 20 kg"]))).toBeNull();
  });
});
