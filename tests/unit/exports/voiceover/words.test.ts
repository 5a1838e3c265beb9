import { describe, expect, it } from "vitest";
import { breathRuns, counted, minutesSeconds, saidDifferently, wholeSeconds } from "../../../../shared/exports/voiceover/words";
import { DEFAULT_PACE } from "../../../../shared/speech";

const printed = (text: string): string => breathRuns(text, DEFAULT_PACE).map((run) => run.text).join("");

describe("breathRuns", () => {
  it("prints a marked breath in bold and keeps the words as they are", () => {
    const runs = breathRuns("Drive the elbows back. / Pause.", DEFAULT_PACE);
    expect(runs.map((run) => run.text).join("")).toBe("Drive the elbows back. / Pause.");
    expect(runs.filter((run) => run.text.trim() === "/")).toEqual([{ text: " /", weight: "bold" }]);
  });

  it("suggests breaths in grey where a stretch is too long, and none at a full stop", () => {
    const long = "Stand side on to the cable and press straight out from the breastbone while the ribs stay over the hips and the knees stay soft and you keep on breathing";
    const runs = breathRuns(`${long}. Then rest.`, DEFAULT_PACE);
    const signs = runs.filter((run) => run.grey);
    expect(signs.length).toBeGreaterThan(0);
    expect(signs.every((run) => run.text === " ¦")).toBe(true);
    expect(printed(`${long}. Then rest.`).replace(/ ¦/g, "")).toBe(`${long}. Then rest.`);
    expect(printed("One. Two. Three.")).toBe("One. Two. Three.");
  });
});

describe("saidDifferently", () => {
  it("gives the sentences with figures as they are spoken, and only those", () => {
    expect(saidDifferently("Do 3 x 8 @ 20 kg. Breathe out, slowly.")).toEqual(["Do three sets of eight at twenty kilos."]);
  });

  it.each(["Walk as if late, but polite.", "Don't lean / hold it there.", "Well-known: heels down!", ""])("is silent when every word is said as it stands: %s", (text) => {
    expect(saidDifferently(text)).toEqual([]);
  });
});

describe("figures in words", () => {
  it.each([[0, "0:00"], [9.4, "0:09"], [59.6, "1:00"], [83.4, "1:23"], [3600, "60:00"], [-3, "0:00"]])("writes %s seconds as %s", (seconds, text) => {
    expect(minutesSeconds(seconds)).toBe(text);
  });

  it("never calls something nothing", () => {
    expect([wholeSeconds(0), wholeSeconds(0.2), wholeSeconds(13.5)]).toEqual(["0 s", "1 s", "14 s"]);
  });

  it("counts in the singular and plural", () => expect([counted(1, "word"), counted(0, "word")]).toEqual(["1 word", "0 words"]));
});
