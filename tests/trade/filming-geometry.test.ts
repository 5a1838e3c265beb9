import { describe, expect, it } from "vitest";
import { angleOfView, distanceToFill, focalLength, FRAMES, LENSES, megabytesPerMinute, parseShotLine, RECORDING_FORMATS, recordingOf, SHOT_SIZES, standFor, USUAL_SETUP } from "../../shared/filming";
import { ANGLES } from "../../shared/exercises";

describe("camera geometry against the published field-of-view formula", () => {
  // Angle of view = 2 atan(side / 2f), as in any photographic handbook; table values for a 36 mm wide frame, from memory.
  it.each([
    [14, 104.3], [18, 90], [24, 73.7], [26, 69.4], [35, 54.4], [50, 39.6], [85, 23.9], [100, 20.4],
  ])("a %i mm lens sees %f degrees across 36 mm", (focal, degrees) => {
    expect(Math.abs(angleOfView(36, focal) - degrees)).toBeLessThan(0.06);
  });

  it("fills the frame where the angle of view says it does", () => {
    for (const focal of Object.values(LENSES)) {
      for (const { wide } of Object.values(FRAMES)) {
        const metres = 1.75;
        const byAngle = metres / 2 / Math.tan((angleOfView(wide, focal) * Math.PI) / 360);
        expect(distanceToFill(metres, wide, focal)).toBeCloseTo(byAngle, 9);
      }
    }
  });

  it("frames in the proportions of the video: 16 to 9, 9 to 16, and the upright strip inside the landscape", () => {
    expect(FRAMES["16:9"].wide / FRAMES["16:9"].tall).toBeCloseTo(16 / 9);
    expect(FRAMES["9:16"].wide / FRAMES["9:16"].tall).toBeCloseTo(9 / 16);
    expect(FRAMES.both.wide / FRAMES.both.tall).toBeCloseTo(9 / 16);
    expect(FRAMES.both.tall).toBe(FRAMES["16:9"].tall);
  });

  it("doubles the distance when the focal length doubles", () => {
    const near = standFor({ ...USUAL_SETUP, angle: "front", size: "full", lens: 25 }).distance;
    expect(Math.abs(standFor({ ...USUAL_SETUP, angle: "front", size: "full", lens: 50 }).distance - 2 * near)).toBeLessThanOrEqual(0.15);
    expect(focalLength("main")).toBe(26);
  });
});

describe("shot terms of the trade", () => {
  // Common film-school usage, from memory: what each size shows of the body.
  it.each([
    ["wide shot", "wide"], ["long shot", "wide"], ["WS", "wide"], ["full shot", "full"], ["head to toe", "full"], ["FS", "full"],
    ["medium shot", "medium"], ["waist up", "medium"], ["MS", "medium"], ["close-up", "close-up"], ["close up", "close-up"], ["CU", "close-up"],
    ["extreme close-up", "close-up"], ["insert", "insert"],
  ])("%s is the size %s", (term, size) => {
    expect(parseShotLine(`${term}: x`).size).toBe(size);
  });

  // Angles, from memory.
  it.each([
    ["front", "front"], ["head-on", "front"], ["side", "side"], ["profile", "side"], ["three-quarter", "three-quarter"], ["3/4", "three-quarter"],
    ["rear", "rear"], ["back", "rear"], ["from behind", "rear"], ["high angle", "high"], ["overhead", "high"], ["low angle", "low"], ["ground level", "low"],
  ])("%s is the angle %s", (term, angle) => {
    expect(parseShotLine(`${term}: x`).angle).toBe(angle);
  });

  it("every angle and size of the trade can be written", () => {
    for (const angle of ANGLES) expect(parseShotLine(`${angle}, full: x`).angle).toBe(angle);
    for (const size of SHOT_SIZES) expect(parseShotLine(`side, ${size}: x`).size).toBe(size);
  });
});

describe("card sizes against typical figures", () => {
  it("turns megabits a second into decimal megabytes a minute: x 60 / 8", () => {
    expect(megabytesPerMinute(17)).toBe(127.5);
    expect(megabytesPerMinute(8)).toBe(60);
    // PCM sound, 48 kHz: 24-bit mono and 16-bit stereo
    expect(megabytesPerMinute((48_000 * 24) / 1e6)).toBeCloseTo(8.64);
    expect(megabytesPerMinute((48_000 * 16 * 2) / 1e6)).toBeCloseTo(11.52);
  });

  it("records 14 shots, 3 takes, 40 s each, in 1680 MB", () => {
    expect(recordingOf((14 * 3 * 40) / 60, "1080p30 HEVC").megabytes).toBeCloseTo(1680);
  });

  // Typical phone figures, MB a minute: H.264 1080p30 and 4K30 from a published help page, the rest from memory; files vary by 40 %.
  it.each([
    ["1080p30 HEVC", 60, 60], ["1080p60 HEVC", 90, 90], ["4K30 HEVC", 170, 190], ["4K60 HEVC", 400, 440],
    ["1080p30 H.264", 127, 130], ["1080p60 H.264", 172, 175], ["4K30 H.264", 350, 375],
  ] as const)("%s takes %i to %i MB a minute", (format, least, most) => {
    const rate = megabytesPerMinute(RECORDING_FORMATS[format]);
    expect(rate).toBeGreaterThanOrEqual(least);
    expect(rate).toBeLessThanOrEqual(most);
  });
});
