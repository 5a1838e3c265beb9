import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, episodeSchema, nextEpisode } from "../../../shared/episode";

describe("nextEpisode", () => {
  const next = nextEpisode(demoEpisode, countingIds("n"));

  it("is a valid empty page of the same series, one number on", () => {
    expect(episodeSchema.safeParse(next).success).toBe(true);
    expect([next.series.name, next.series.number, next.blocks, next.title]).toEqual(["Strong for the Trail", 8, [], ""]);
    expect(next.id).not.toBe(demoEpisode.id);
  });
  it("hands on what was planned for each exercise, once", () => {
    expect(next.carryOver.map(({ exercise }) => exercise)).toEqual(["chest-supported-row", "half-kneeling-landmine-press", "goblet-squat", "farmers-carry", "anti-rotation-press"]);
    expect(next.carryOver[0]?.sets).toBe("3 x 8-10 @ 22 kg each hand, tempo 3-1-1-0, rest 90 s, RIR 2");
  });
  it("leaves days, partners and waivers behind", () => {
    expect([next.publish, next.session.date, next.partners, next.waivers]).toEqual([null, null, [], []]);
    expect(next.session.place).toBe(demoEpisode.session.place);
  });
});
