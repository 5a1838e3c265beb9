import { describe, expect, it } from "vitest";
import { angleOfView, distanceToFill, focalLength, frameAt, FRAMES, LENSES, megabytesPerMinute, parseShotLine, RECORDING_FORMATS, recordingOf, SHOT_SIZES, standFor, USUAL_SETUP } from "../../shared/filming";
import { ANGLES } from "../../shared/exercises";

describe("camera geometry against the published field-of-view formula", () => {
  // "Angle of View Values for Common Focal Lengths" (2006, photonstophotos.net): width, height and diagonal of a 36 x 24 mm frame, rectilinear.
  it.each([
    [10, 121.9, 100.4, 130.4], [12, 112.6, 90, 122], [14, 104.3, 81.2, 114.2], [18, 90, 67.4, 100.5], [20, 84, 61.9, 94.5], [24, 73.7, 53.1, 84.1],
    [28, 65.5, 46.4, 75.4], [35, 54.4, 37.8, 63.4], [50, 39.6, 27, 46.8], [70, 28.8, 19.5, 34.3], [85, 23.9, 16.1, 28.6], [100, 20.4, 13.7, 24.4], [135, 15.2, 10.2, 18.2],
  ])("a %i mm lens sees %f by %f degrees, %f corner to corner", (focal, across, up, corner) => {
    for (const [side, degrees] of [[36, across], [24, up], [Math.hypot(36, 24), corner]] as const) expect(Math.abs(angleOfView(side, focal) - degrees)).toBeLessThanOrEqual(0.1);
  });

  it("films a wall as broad as the published angle says, from any distance", () => {
    // width = 2 d tan(angle / 2): 50 mm sees 39.6 degrees, so 3.6 m of a wall from 5 m
    const { wide } = frameAt({ ...USUAL_SETUP, lens: 50 }, "front", "full", 5);
    expect(Math.abs(wide - 2 * 5 * Math.tan((39.6 * Math.PI) / 360))).toBeLessThan(0.02);
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

describe("what a size shows of the body, in the terms of the trade", () => {
  // Film-school glossaries (clairegipson.com/shots; K-10 media arts glossary, Western Australia): full is the entire body, medium is the waist up,
  // medium close-up the chest up, close-up the head and shoulders or one part that matters.
  it.each([["full", /^head to toe/], ["wide", /^head to toe with/], ["medium", /^waist up/], ["close-up", /^head or one joint/], ["insert", /^a detail/]] as const)("%s", (size, words) => {
    for (const angle of ["front", "side", "rear"] as const) {
      const { distance } = standFor({ ...USUAL_SETUP, angle, size });
      expect(frameAt(USUAL_SETUP, angle, size, distance).shows).toMatch(words);
    }
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

  // Published for phones, MB a minute, H.264: itigic.com "How much space" and 9to5mac.com 2015 (130 and 375), letsunlockiphone.guru 2015 (200 at 60 frames).
  it.each([["1080p30 H.264", 130], ["1080p60 H.264", 200], ["4K30 H.264", 375]] as const)("%s is within the margin of the published %i MB a minute", (format, published) => {
    const megabytes = recordingOf(1, format).megabytes;
    expect(Math.abs(megabytes - published) / published).toBeLessThan(0.15);
    expect(recordingOf(1, format).gigabytes * 1000).toBeGreaterThan(published);
  });

  // Typical phone figures, MB a minute: H.264 1080p30 and 4K30 as published, the rest from memory; files vary by 40 %.
  it.each([
    ["1080p30 HEVC", 60, 60], ["1080p60 HEVC", 90, 90], ["4K30 HEVC", 170, 190], ["4K60 HEVC", 400, 440],
    ["1080p30 H.264", 127, 130], ["1080p60 H.264", 172, 175], ["4K30 H.264", 350, 375],
  ] as const)("%s takes %i to %i MB a minute", (format, least, most) => {
    const rate = megabytesPerMinute(RECORDING_FORMATS[format]);
    expect(rate).toBeGreaterThanOrEqual(least);
    expect(rate).toBeLessThanOrEqual(most);
  });
});
