import { describe, expect, it } from "vitest";
import { weighedWords } from "../../../../shared/exports/voiceover/emphasis";
import { breathRuns, counted, minutesSeconds, wholeSeconds } from "../../../../shared/exports/voiceover/words";
import { breaths } from "../../../../shared/speech";

const runsOf = (text: string) => breathRuns(breaths(text));
const printed = (text: string): string => runsOf(text).map((run) => run.text).join("").replace(/\u00a0/g, " ");

describe("breathRuns", () => {
  it("prints a marked breath in bold, held to the word before it, and keeps the words as they are", () => {
    const runs = runsOf("Drive the elbows back. / Pause.");
    expect(runs).toEqual([{ text: "Drive the elbows back." }, { text: "\u00a0/", weight: "bold" }, { text: " Pause." }]);
  });

  it("suggests breaths in grey where a stretch is too long, and none at a full stop", () => {
    const long = "Stand side on to the cable and press straight out from the breastbone while the ribs stay over the hips and the knees stay soft and you keep on breathing";
    const signs = runsOf(`${long}. Then rest.`).filter((run) => run.grey);
    expect(signs.length).toBeGreaterThan(0);
    expect(signs.every((run) => run.text === "\u00a0¦")).toBe(true);
    expect(printed(`${long}. Then rest.`).replace(/ ¦/g, "")).toBe(`${long}. Then rest.`);
    expect(printed("One. Two. Three.")).toBe("One. Two. Three.");
  });
});

describe("a figure and its unit", () => {
  it.each([
    ["Lift 45 kg now.", "Lift 45_kg now."], ["Rest 90 s, then 8-10 reps.", "Rest 90_s, then 8-10_reps."], ["Do 3 x 8 @ 20 kg.", "Do 3_x_8 @_20_kg."], ["Hold *20 s*.", "Hold 20_s."],
    ["Set 2 starts here.", "Set 2 starts here."], ["The 3 men.", "The 3 men."],
  ])("stand on one line: %j", (text, kept) => {
    expect(runsOf(text).map((run) => run.text).join("").replace(/\u00a0/g, "_")).toBe(kept);
  });
});

describe("weighedWords", () => {
  const strong = (text: string): string[] => weighedWords(text).filter((word) => word.strong).map((word) => word.text);
  it("finds the words between stars", () => {
    expect(strong("Lower it *very slowly*, then *stop*.")).toEqual(["very", "slowly,", "stop."]);
    expect(strong("(*not* today)")).toEqual(["(not"]);
  });
  it.each(["3 * 8 * 20", "2*3*4", "a * lonely star", "**", "no stars", ""])("leaves other stars alone: %j", (text) => {
    expect(strong(text)).toEqual([]);
    expect(weighedWords(text).map((word) => word.text).join(" ")).toBe(text);
  });
});

describe("figures in words", () => {
  it.each([[0, "0:00"], [9.4, "0:09"], [59.6, "1:00"], [83.4, "1:23"], [3600, "1:00:00"], [-3, "0:00"]])("writes %s seconds as %s", (seconds, text) => {
    expect(minutesSeconds(seconds)).toBe(text);
  });

  it("never calls something nothing", () => {
    expect([wholeSeconds(0), wholeSeconds(0.2), wholeSeconds(13.5)]).toEqual(["0 s", "1 s", "14 s"]);
  });

  it("counts in the singular and plural", () => expect([counted(1, "word"), counted(0, "word")]).toEqual(["1 word", "0 words"]));
});
