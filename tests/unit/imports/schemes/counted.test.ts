import { describe, expect, it } from "vitest";
import type { Ordered } from "../../../../shared/imports/schemes/compose";
import { isCounted } from "../../../../shared/imports/schemes/counted";
import { UNIT_NOT_SAID } from "../../../../shared/imports/schemes/extras";
import { wordsOfText } from "../../../../shared/imports/source/words";
import type { Scheme } from "../../../../shared/training";

/** Is the number in stars no weight? @param said - numbers in equals signs are reps, those in plus signs other weights */
function counted(said: string, isWeighted: boolean): boolean {
  const words = wordsOfText(said.replace(/[*=+]/g, ""));
  const VALUES: Readonly<Record<string, number>> = { eights: 8, eight: 8, sixes: 6, six: 6, tens: 10, ten: 10, twenties: 20 };
  const figures = said.split(" ").flatMap((word, at): Ordered[] => {
    const sign = /^[*=+]/.exec(word)?.[0];
    const value = VALUES[word.replace(/[*=+]/g, "")] ?? 0;
    const says: Partial<Scheme> = sign === "=" ? { repsMin: value, repsMax: value } : { load: { value, unit: "kg" } };
    return sign === undefined ? [] : [{ says, rank: "part", about: "working", either: false, remark: sign === "=" ? null : UNIT_NOT_SAID, from: at, to: at, sentence: 0 }];
  });
  const at = said.split(" ").filter((word) => /^[*=+]/.test(word)).findIndex((word) => word.startsWith("*"));
  return isCounted(figures[at] as Ordered, figures, words, isWeighted);
}

describe("a number in the plural that may be a weight", () => {
  it.each<readonly [said: string, isWeighted: boolean, isCounted: boolean]>([
    ["chest to the bar *eights* for these so =eight= reps three times round", true, true],
    ["bulgarian split squats *sixes* three by =six= each leg and i've +twenties+ on", true, true],
    ["with a band these are *eights* and that was a hard and a slow =eight=", false, true],
    ["curls with the *tens* for =ten= reps", true, false],
    ["lunges and i've got *tens* so it's =ten= each leg", false, false],
    ["lunges *tens* in each hand and =ten= each leg", false, false],
    ["up each set so *tens* for =ten= then", true, false],
    ["presses *tens* and nothing else", false, false],
    ["up each set so *tens* for =ten= then", true, false],
    ["presses *tens* and =eight= reps", false, false],
  ])("%s", (said, isWeighted, wanted) => {
    expect(counted(said, isWeighted)).toBe(wanted);
  });
});
