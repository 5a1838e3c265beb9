import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, newLine, type Block } from "../../../shared/episode";
import { marksOf, recordedMinutes, recording, recordingOf, setupOf, shotSeconds, shotsOf } from "../../../shared/filming";

const newId = countingIds("t-");
const filmed = (...texts: string[]): Block => emptyBlock(newId, "exercise", { lines: texts.map((text) => newLine(newId, "shot", text)) });

describe("the shots of a block", () => {
  it("are its shot lines, read once per block", () => {
    const block = { ...filmed("side, full, 12 s: a"), lines: [newLine(newId, "cue", "side"), newLine(newId, "shot", "side, full, 12 s: a")] };
    expect(shotsOf(block)).toHaveLength(1);
    expect(shotsOf(block)).toBe(shotsOf(block));
  });

  it("add up their seconds, eight for one that does not say", () => {
    expect(shotSeconds(filmed("side, 12 s: a", "front: b"))).toBe(20);
    expect(shotSeconds(filmed())).toBe(0);
  });
});

describe("marks", () => {
  it("are one per angle and size, lettered in order of first use", () => {
    const marks = marksOf(filmed("Side, full: a", "Front, full: b", "side, full, set 2: c", "side, medium: d"));
    expect(marks.map(({ letter, angle, size, shots }) => [letter, angle, size, shots.length])).toEqual([
      ["A", "side", "full", 2], ["B", "front", "full", 1], ["C", "side", "medium", 1],
    ]);
  });

  it("go on after Z", () => {
    const sizes = ["wide", "full", "medium", "close-up", "insert", "any size"];
    const angles = ["front", "side", "rear", "high", "low"];
    const letters = marksOf(filmed(...sizes.flatMap((size) => angles.map((angle) => `${angle}, ${size}: x`)))).map(({ letter }) => letter);
    expect(letters.slice(24, 28)).toEqual(["Y", "Z", "AA", "AB"]);
  });

  it("stand where the exercise's position and the episode's aspect ask for", () => {
    const row = demoEpisode.blocks.find(({ exercise }) => exercise === "goblet-squat") as Block;
    expect(setupOf(demoEpisode, row)).toMatchObject({ aspect: "16:9", lens: "main", stature: 1.75, position: "standing" });
    expect(marksOf(row, setupOf(demoEpisode, row))[0]?.stand).toEqual({ distance: 2.6, height: 0.9, tilt: 0, steps: 3.5, level: "hip" });
    expect(setupOf(demoEpisode, filmed(), { stature: 1.6 }).stature).toBe(1.6);
  });
});

describe("card and battery", () => {
  it("count a whole set for a shot on a set, once for each set it names", () => {
    // (40 + 4) x 2 sets, 8 + 4 beside any set
    expect(recordedMinutes([filmed("side, sets 1-2: a", "insert: b")])).toBeCloseTo((44 * 2 + 12) / 60);
  });

  it("hold a margin on the card and count batteries of 90 minutes", () => {
    const { gigabytes, batteries, megabytes } = recordingOf(45, "4K30 H.264");
    expect(megabytes).toBe(45 * 375);
    expect(gigabytes).toBeCloseTo((45 * 375 * 1.4) / 1000);
    expect(batteries).toBe(0.5);
  });

  it("take an episode as well as blocks", () => {
    expect(recording(demoEpisode)).toEqual(recording(demoEpisode.blocks));
    expect(recording([]).gigabytes).toBe(0);
  });
});
