import { describe, expect, it } from "vitest";
import { truthOf } from "../../../../shared/imports/learning/truth";
import { isTrueIn } from "../../../../shared/imports/owners/truth";
import type { Ordered } from "../../../../shared/imports/schemes/compose";
import type { Scheme } from "../../../../shared/training";

const HEAD = `rate: 4.6
opening: yes
warm-up: no
back-squat: ramp 1 x 8 @ 20 kg; 1 x 3 @ 80 kg, rest 3 min; 2 x 5 @ 70 kg, rest 3 min
"pallof press": 3 x 10 each side
push-up: -
---
words`;

const said = (says: Partial<Scheme>, about: Ordered["about"] = "working"): Ordered => ({ says, about, rank: "part", either: false, remark: null, from: 0, to: 0, sentence: 0 });

describe("the head of a transcript", () => {
  const [squat, press, none] = truthOf(HEAD);

  it("tells exercises in order, and their set lines", () => {
    expect(truthOf(HEAD).map(({ name, sets }) => [name, sets.map(({ role }) => role)])).toEqual([["back-squat", ["ramp-up", "working", "working"]], ['"pallof press"', ["working"]], ["push-up", []]]);
  });

  it.each<readonly [string, Partial<Scheme>, Ordered["about"], boolean]>([
    ["reps of one of the lines", { repsMin: 5, repsMax: 5 }, "working", true],
    ["reps of the ramp are no working reps", { repsMin: 8, repsMax: 8 }, "working", false],
    ["reps of the ramp, said of it", { repsMin: 8, repsMax: 8 }, "ramp-up", true],
    ["sets of all lines together", { sets: 3 }, "working", true],
    ["sets nobody does", { sets: 4 }, "working", false],
    ["a weight", { load: { value: 70, unit: "lb" } }, "working", true],
    ["a rest", { restSeconds: 180 }, "working", true],
    ["sides that are not told", { eachSide: true }, "working", false],
  ])("%s", (_, says, about, is) => {
    expect(squat && isTrueIn(said(says, about), squat)).toBe(is);
  });

  it("knows sides, and that nothing is true of an exercise without sets", () => {
    expect(press && isTrueIn(said({ eachSide: true }), press)).toBe(true);
    expect(none && isTrueIn(said({ sets: 3 }), none)).toBe(false);
  });
});
