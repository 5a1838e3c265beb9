import { describe, expect, it } from "vitest";
import { demoEpisode, migrate, readEpisode } from "../../../shared/episode";

/** A version 1 file as that version wrote it. */
const version1 = {
  format: "repwright-episode", version: 1, id: "old", title: "Carries",
  series: { name: "Strong for the Trail", number: 1, coach: "Odalys Brandt" },
  audience: { level: "beginner", groups: [] },
  session: { place: "Harbour Street Strength Room", date: null, time: null, slotMinutes: 60, kit: [], units: "kg" },
  video: { targetMinutes: 7.5, frameRate: "25", aspect: "16:9" },
  publish: null, partners: [], waivers: [],
  blocks: [
    { id: "b1", kind: "exercise", title: "Farmer's carry", exercise: "farmers-carry", station: "", minutes: null, clipSeconds: null, sets: "4 x 40 m @ 24 kg", lines: [], alternates: [] },
    { id: "b2", kind: "talk", title: "", exercise: null, station: "", minutes: null, clipSeconds: null, sets: "", lines: [{ id: "l1", kind: "say", text: "Hello." }], alternates: [] },
  ],
};

describe("migration from version 1", () => {
  const read = readEpisode(JSON.stringify(version1));

  it("reads the file and says where it came from", () => {
    expect(read.ok && read.migratedFrom).toBe(1);
  });
  it("counts the video in seconds", () => {
    expect(read.ok && read.episode.video.targetSeconds).toBe(450);
  });
  it("makes a set line of the text, and none of an empty one", () => {
    expect(read.ok && read.episode.blocks.map((block) => block.sets)).toEqual([[{ id: "b1-s1", role: "working", text: "4 x 40 m @ 24 kg" }], []]);
  });
  it("fills in what version 1 did not know", () => {
    expect(read.ok && [read.episode.session.cameras, read.episode.session.alone, read.episode.carryOver, read.episode.blocks[0]?.actuals, read.episode.series.quiet]).toEqual([1, true, [], [], []]);
  });
  it("still refuses a version 1 file with a wrong value, by its place", () => {
    const bad = readEpisode(JSON.stringify({ ...version1, video: { ...version1.video, targetMinutes: "seven" } }));
    expect(bad.ok ? "" : bad.message).toMatch(/^At video\.targetSeconds: expected number/);
  });
  it("leaves the newest version alone", () => {
    expect(migrate({ ...demoEpisode })).toEqual(demoEpisode);
  });
});
