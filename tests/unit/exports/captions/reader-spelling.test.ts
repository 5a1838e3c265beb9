import { describe, expect, it } from "vitest";
import { demoEpisode } from "../../../../shared/episode";
import { EXERCISES } from "../../../../shared/exercises";
import { spokenForm } from "../../../../shared/speech";
import { numberOf } from "../../../../shared/exports/captions/number-words";
import { spelledForReader } from "../../../../shared/exports/captions/reader-spelling";

describe("numberOf", () => {
  it.each([
    ["eight", 8], ["twelve", 12], ["forty-two", 42], ["forty two point five", 42.5], ["a hundred", 100], ["one hundred and twenty", 120], ["a hundred and five", 105],
    ["two thousand five hundred", 2500], ["two and a half", 2.5], ["seven point two five", 7.25], ["zero", 0], ["ninety", 90], ["a thousand", 1000],
    ["six forty-five", null], ["three two one", null], ["twenty twenty", null], ["ten eight six", null], ["twenty zero", null],
  ])("%s", (words, value) => {
    expect(numberOf(words)).toBe(value);
  });
});

describe("a line spelled for the reader", () => {
  it.each([
    ["3x8-10 @ 42.5kg, tempo 3-1-1-0", "3 x 8-10 at 42.5 kg, tempo 3-1-1-0"],
    ["Three sets of eight to ten at forty-two point five kilos.", "3 sets of 8 to 10 at 42.5 kg."],
    ["Tempo three one one zero, rest ninety seconds.", "tempo 3-1-1-0, rest 90 seconds."],
    ["Forty metres there and back, four times.", "40 m there and back, four times."],
    ["Lie on a bench set at about thirty degrees.", "Lie on a bench set at about 30°."],
    ["a twenty-kilo bell and a thirty-second rest", "a 20 kg bell and a 30-second rest"],
    ["Eight on each side, and the last two reps slow down.", "8 on each side, and the last 2 reps slow down."],
    ["Twelve on each side, then swap.", "12 on each side, then swap."],
    ["one hundred percent", "100%"], ["a hundred pounds", "100 lb"], ["two and a half kilograms", "2.5 kg"], ["one kilo more", "1 kg more"],
    ["Lift *slowly*, then *rest*.", "Lift slowly, then rest."],
    ["One side, then the other. No one else.", "One side, then the other. No one else."],
    ["At six forty-five we start: three, two, one.", "At six forty-five we start: three, two, one."],
    ["A three-quarter view, a one-arm row, someone's tenth set.", "A three-quarter view, a one-arm row, someone's tenth set."],
    ["The under-15s, in the 90s, over-75s; rest 90s, walk 40m.", "The under-15s, in the 90s, over-75s; rest 90 s, walk 40 m."],
    ["4x6 tempo 20X0, then 2.5x10", "4 x 6 tempo 20X0, then 2.5x10"],
    ["Put another two and a half on, sixty-two and a half in all.", "Put another two and a half on, 62.5 in all."],
    ["Hold for two or three seconds.", "Hold for 2 or 3 seconds."],
    ["eight or ten kilos, thirty or forty", "8 or 10 kg, 30 or 40"],
    ["One or two of them.", "One or two of them."],
    ["two, maybe three seconds", "two, maybe three seconds"],
    ["between two and three seconds", "between two and three seconds"],
    ["eight, ten or twelve reps", "eight, ten or twelve reps"],
    ["eight to ten, three seconds down", "eight to ten, three seconds down"],
    ["Three sets of eight to ten, three seconds down", "3 sets of 8 to 10, 3 seconds down"],
    ["Three sets of eight to ten, then two or three more", "3 sets of 8 to 10, then two or three more"],
    ["Two and a half steps, one and a half minutes", "2½ steps, one and a half minutes"],
    ["ten and a half reps at two and a half kilos", "10½ reps at 2.5 kg"],
    ["In your 40s and 50s, the '90s, a pair of 22.5s", "In your 40s and 50s, the '90s, a pair of 22.5s"],
    ["Hold under 30s, your 40s on, the 30s rest", "Hold under 30 s, your 40 s on, the 30 s rest"],
    ["3x8@31X0, 4010, then 31X1", "3 x 8 at 31X0, 4010, then 31X1"],
    ["Breathe / and rest", "Breathe / and rest"], ["", ""],
  ])("%j is %j", (said, read) => {
    expect(spelledForReader(said)).toBe(read);
  });

  it("changes nothing the second time", () => {
    for (const text of ["Three sets of eight at forty kilos", "3x8@40kg", "ninety seconds"]) expect(spelledForReader(spelledForReader(text))).toBe(spelledForReader(text));
  });

  it("is said as the line is said, for every coaching line of the demo and the catalogue", () => {
    const bare = (text: string): string => spokenForm(text).toLowerCase().replace(/[^\p{L}\p{N}' ]+/gu, " ").replace(/kilograms?|kilo\b/g, "kilos").replace(/\b(?:meter|metre)s?\b/g, "metres").replace(/\s+/g, " ").trim();
    const lines = [...demoEpisode.blocks.flatMap(({ lines: said }) => said.map(({ text }) => text)), ...EXERCISES.flatMap(({ cues }) => cues.map(({ text }) => text))];
    expect(lines.length).toBeGreaterThan(100);
    for (const line of lines) expect(bare(spelledForReader(line))).toBe(bare(line));
  });
});
