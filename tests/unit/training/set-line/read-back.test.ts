import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseSetLine, printSetLine, readBack, repsOfSet, setCount, type Scheme } from "../../../../shared/training";
import { anyScheme } from "../scheme-arbitrary";

function scheme(text: string): Scheme {
  const parsed = parseSetLine(text);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.error}`);
  return parsed.scheme;
}

describe("saying a set line", () => {
  it.each([
    ["3 x 8-10 @ 22 kg each hand, tempo 3-1-1-0, rest 90 s, RIR 2", "3 x 8-10 @ 22 kg each hand, tempo 3-1-1-0, rest 90 s, RIR 2", "three sets of eight to ten, 22 kilos in each hand, three seconds down, one-second pause, one second up, rest ninety seconds, two reps in reserve"],
    ["1x8/side, 7,5kg, 45s", "1 x 8 each side @ 7.5 kg, rest 45 s", "one set of eight each side, 7.5 kilos, rest forty-five seconds"],
    ["12/10/8 @ 1 kg", "12/10/8 @ 1 kg", "three sets: twelve, ten, eight, 1 kilo"],
    ["5x5+ @ 80%, 3 min", "5 x 5+ @ 80%, rest 3 min", "five sets of five, as many as possible in the last set, 80 percent of the one-rep max, rest three minutes"],
    ["2 x AMRAP BW, no rest", "2 x AMRAP @ BW, rest 0 s", "two sets of as many as possible, bodyweight, no rest"],
    ["AMRAP 6 min, red band", "AMRAP in 6 min @ band", "as many as possible in six minutes, with a band"],
    ["B1: 4x40m 2x24kg rest 2:30", "B1: 4 x 40 m @ 24 kg each hand, rest 150 s", "B1, four sets of forty metres, 24 kilos in each hand, rest two minutes thirty"],
    ["EMOM 8: 1 rep BW+5kg", "EMOM 8 min: 1 rep @ BW + 5 kg", "one rep every minute for eight minutes, bodyweight plus 5 kilos"],
    ["3x6 BW-15lb, 4s negative, explosive up", "3 x 6 @ BW - 15 lb, 4 s down, explosive up", "three sets of six, bodyweight less 15 pounds, four seconds down, up as fast as control allows"],
    ["3x8 + 1 drop, RPE 8,5", "3 x 8, then 1 drop set, RPE 8.5", "three sets of eight, then one drop set, effort eight and a half of ten"],
    ["3 x 1 min, pause at the top, RIR 0", "3 x 60 s, 1 s pause at the top, RIR 0", "three sets of one minute, one-second pause at the top, nothing in reserve"],
    ["12 min", "12 min", "twelve minutes"],
  ])("prints and reads back %j", (text, printed, words) => {
    expect([printSetLine(scheme(text)), readBack(scheme(text))]).toEqual([printed, words]);
  });

  it("says every field of a scheme, so that no two schemes that differ in one sound alike", () => {
    const fields = [
      scheme("3x8"), scheme("4x8"), scheme("3x9"), scheme("3x8-9"), scheme("3x8+"), scheme("3x8 e/s"), scheme("3x8 BW"), scheme("3x8 band"), scheme("3x8 8kg"), scheme("3x8 8lb"), scheme("3x8 2x8kg"), scheme("3x8 8%"),
      scheme("3x8 rest 60"), scheme("3x8 RPE 8"), scheme("3x8 RIR 8"), scheme("3x8 + 1 drop"), scheme("A1: 3x8"), scheme("3x8 paused"), scheme("3x8 tempo 3110"), scheme("3x8 tempo 31X0"), scheme("3 x 8 s"), scheme("3 x 8 m"), scheme("8/8/8"), scheme("3 x AMRAP"), scheme("EMOM 3: 8 reps"),
    ];
    expect(new Set(fields.map(readBack)).size).toBe(fields.length);
    expect(new Set(fields.map(printSetLine)).size).toBe(fields.length);
  });

  it("reads back any scheme in one line without holes", () => {
    fc.assert(fc.property(anyScheme, (any) => {
      expect(readBack(any)).not.toMatch(/undefined|null|NaN|\s,|,,|\s\s|\n/);
    }));
  });

  it("knows numbers in words", () => {
    expect([7, 13, 20, 21, 90, 100, 101, 342, 1000, 1001, 2750].map((metres) => readBack({ meters: metres }).replace(/ metres$/, ""))).toEqual([
      "seven", "thirteen", "twenty", "twenty-one", "ninety", "one hundred", "one hundred and one", "three hundred and forty-two", "one thousand", "one thousand and one", "two thousand seven hundred and fifty",
    ]);
  });
});

describe("counting sets and reps", () => {
  it.each([["3x8", 3], ["12/10/8", 3], ["EMOM 8: 4 reps", 8], ["AMRAP 6 min", 1], ["5 min", 1]])("counts the sets of %s", (text, count) => {
    expect(setCount(scheme(text))).toBe(count);
  });

  it("gives the reps of each set, and none where no number is stated", () => {
    expect([1, 2, 3, 4, 0].map((n) => repsOfSet(scheme("12/10/8"), n))).toEqual([{ min: 12, max: 12 }, { min: 10, max: 10 }, { min: 8, max: 8 }, null, null]);
    expect(repsOfSet(scheme("3x8-10"), 3)).toEqual({ min: 8, max: 10 });
    expect(repsOfSet(scheme("3 x 40s"), 1)).toBeNull();
    expect(repsOfSet(scheme("3 x AMRAP"), 1)).toBeNull();
  });
});
