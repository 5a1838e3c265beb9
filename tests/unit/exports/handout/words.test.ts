import { describe, expect, it } from "vitest";
import type { Scheme } from "../../../../shared/training";
import { doseInWords, loadInWords, mannerInWords, tempoInWords, timeInWords } from "../../../../shared/exports/handout/words";

describe("set lines in a viewer's words", () => {
  it.each<[Scheme, string]>([
    [{ sets: 3, repsMin: 8, repsMax: 10 }, "3 sets of 8 to 10"],
    [{ sets: 1, repsMin: 5, repsMax: 5 }, "1 set of 5"],
    [{ sets: 3, repsMin: 8, repsMax: 8, eachSide: true }, "3 sets of 8 each side"],
    [{ sets: 4, meters: 40 }, "4 sets of 40 m"],
    [{ sets: 3, seconds: 45, eachSide: true }, "3 sets of 45 s each side"],
    [{ seconds: 180 }, "3 min"],
    [{ repsMin: 10, repsMax: 10 }, "10 reps"],
    [{ reps: [10, 8, 6] }, "3 sets: 10, 8, 6 reps"],
    [{ sets: 3, amrap: true }, "3 sets, as many good reps as you can"],
    [{ seconds: 90, amrap: true }, "as many good reps as you can in 90 s"],
    [{ sets: 3, repsMin: 5, repsMax: 5, amrap: true }, "3 sets of 5, in the last one as many good reps as you can"],
    [{ emomMinutes: 10, repsMin: 5, repsMax: 5 }, "each minute for 10 minutes: 5 reps"],
    [{ sets: 2, repsMin: 12, repsMax: 12, dropSets: 1 }, "2 sets of 12, then 1 lighter set without a rest"],
  ])("%j reads %s", (scheme, words) => {
    expect(doseInWords(scheme)).toBe(words);
  });

  it.each<[Scheme["load"], "kg" | "lb", string]>([
    [{ value: 22, unit: "kg", perHand: true }, "kg", "22 kg each hand"],
    [{ value: 7.5, unit: "kg" }, "kg", "7.5 kg"],
    [{ value: 20, unit: "kg" }, "lb", "about 44 lb"],
    [{ value: 45, unit: "lb" }, "kg", "about 20.5 kg"],
    [{ value: 2.5, unit: "kg" }, "lb", "about 5.5 lb"],
    [{ value: null, unit: "bodyweight" }, "lb", "bodyweight"],
    [{ value: 10, unit: "bodyweight+kg" }, "kg", "bodyweight plus 10 kg"],
    [{ value: -10, unit: "bodyweight+kg" }, "kg", "bodyweight less 10 kg"],
    [{ value: null, unit: "band" }, "kg", "a band"],
    [{ value: 70, unit: "%1RM" }, "kg", ""],
    [undefined, "kg", ""],
  ])("a load %j in %s reads %s", (load, units, words) => {
    expect(loadInWords(load, units)).toBe(words);
  });

  it("says how it should go, and nothing of what the line leaves open", () => {
    expect(mannerInWords({ tempo: [3, 1, 1, 0], rir: 2 })).toBe("3 s down, 1 s pause, 1 s up; 2 reps in reserve");
    expect(mannerInWords({ rir: 1, rpe: 8.5 })).toBe("1 rep in reserve; effort 8.5 of 10");
    expect(mannerInWords({ load: { value: 70, unit: "%1RM" } })).toBe("70 % of your own one-rep maximum");
    expect(mannerInWords({ sets: 3 })).toBe("");
    expect(tempoInWords([2, null, "X", 1])).toBe("2 s down, up as fast as you control, 1 s pause at the top");
  });

  it.each([[45, "45 s"], [90, "90 s"], [120, "2 min"], [150, "2 min 30 s"]])("%d seconds read %s", (seconds, words) => {
    expect(timeInWords(seconds)).toBe(words);
  });
});
