import Timecode from "smpte-timecode";
import { describe, expect, it } from "vitest";
import { FRAME_RATES, type FrameRate } from "../../shared/episode";
import { framesPerDay, framesToSeconds, framesToTimecode, timecodeToFrames } from "../../shared/filming";

/** The first frame of a minute of timecode, counted by hand: 1800 or 1798 frames a minute and so on. */
const framesInMinutes = (minutes: number, rate: FrameRate): number => {
  const nominal = Math.round(Number.parseFloat(rate));
  const dropped = rate.endsWith("drop") ? nominal / 15 : 0;
  return minutes * 60 * nominal - dropped * (minutes - Math.floor(minutes / 10));
};

/** SMPTE ST 12-1 arithmetic; rows from 5 to 17 thousand, 107957 and 1084319 as in the test suite of an open timeline library, the others computed. */
const TABLE: readonly (readonly [number, string, string])[] = [
  [0, "00:00:00;00", "00:00:00:00"],
  [1799, "00:00:59;29", "00:00:59:29"],
  [1800, "00:01:00;02", "00:01:00:00"],
  [3598, "00:02:00;02", "00:01:59:28"],
  [10_789, "00:05:59;29", "00:05:59:19"],
  [10_790, "00:06:00;02", "00:05:59:20"],
  [17_981, "00:09:59;29", "00:09:59:11"],
  [17_982, "00:10:00;00", "00:09:59:12"],
  [107_892, "01:00:00;00", "00:59:56:12"],
  [107_957, "01:00:02;05", "00:59:58:17"],
  [1_084_319, "10:03:00;05", "10:02:23:29"],
  [2_589_407, "23:59:59;29", "23:58:33:17"],
];

describe("timecode against SMPTE ST 12-1", () => {
  it.each(TABLE)("frame %i is %s in drop-frame and %s without", (frame, drop, whole) => {
    expect(framesToTimecode(frame, "29.97 drop")).toBe(drop);
    expect(timecodeToFrames(drop, "29.97 drop")).toBe(frame);
    expect(framesToTimecode(frame, "29.97")).toBe(whole);
    expect(timecodeToFrames(whole, "29.97")).toBe(frame);
  });

  it.each<[number, FrameRate, string]>([
    [3600, "59.94 drop", "00:01:00;04"],
    [35_964, "59.94 drop", "00:10:00;00"],
    [1_084_319, "59.94 drop", "05:01:30;03"],
    [10_001, "24", "00:06:56:17"],
    [1500, "25", "00:01:00:00"],
    [90_061, "25", "01:00:02:11"],
    [3601, "60", "00:01:00:01"],
  ])("frame %i at %s is %s", (frame, rate, timecode) => {
    expect(framesToTimecode(frame, rate)).toBe(timecode);
  });

  it("has the published numbers of frames", () => {
    expect(framesPerDay("29.97 drop")).toBe(2_589_408);
    expect(framesToTimecode(2_589_408, "29.97 drop")).toBe("00:00:00;00");
  });

  it("keeps an hour of drop-frame within 4 ms of the clock, while non-drop drifts 3.6 s", () => {
    expect(framesToSeconds(timecodeToFrames("01:00:00;00", "29.97 drop"), "29.97 drop")).toBeCloseTo(3599.9964, 4);
    expect(framesToSeconds(timecodeToFrames("01:00:00:00", "29.97"), "29.97")).toBeCloseTo(3603.6, 4);
  });
});

describe("timecode against the general-purpose library smpte-timecode", () => {
  it.each(FRAME_RATES)("agrees both ways over a day of frames at %s", (rate) => {
    const drop = rate.endsWith("drop");
    const perSecond = Number.parseFloat(rate);
    const day = framesPerDay(rate);
    let compared = 0;
    // a prime stride visits every second and frame figure; the first ten minutes are compared whole
    for (let frame = 0; frame < day; frame += frame < 36_000 ? 1 : 997) {
      const reference = Timecode(frame, perSecond, drop);
      const ours = framesToTimecode(frame, rate);
      if (ours !== reference.toString() || Timecode(ours, perSecond, drop).frameCount !== timecodeToFrames(ours, rate)) {
        throw new Error(`frame ${frame} at ${rate}: ours ${ours}, reference ${reference.toString()}`);
      }
      compared += 1;
    }
    expect(compared).toBeGreaterThan(37_000);
  });

  it.each(FRAME_RATES)("agrees at the seams of minutes, ten minutes, hours and the day at %s", (rate) => {
    const day = framesPerDay(rate);
    const seam = (minute: number): number => framesInMinutes(minute, rate);
    for (const minute of [1, 2, 9, 10, 11, 59, 60, 61, 600, 719, 720, 1439, 1440]) {
      for (let near = -3; near <= 5; near += 1) {
        const frame = seam(minute) + near;
        if (frame < 0 || frame >= day) continue;
        expect(framesToTimecode(frame, rate)).toBe(Timecode(frame, Number.parseFloat(rate), rate.endsWith("drop")).toString());
      }
    }
  });

  it.each(FRAME_RATES)("adds and takes away frames as the library does at %s", (rate) => {
    const [perSecond, drop] = [Number.parseFloat(rate), rate.endsWith("drop")] as const;
    for (const [start, more] of [[0, 1], [1798, 3], [17_981, 1], [107_891, 2], [500_000, 123_457]] as const) {
      const sum = Timecode(framesToTimecode(start, rate), perSecond, drop).add(more);
      expect(framesToTimecode(start + more, rate)).toBe(sum.toString());
      expect(framesToTimecode(start, rate)).toBe(sum.subtract(more).toString());
    }
  });

  it("refuses what the library refuses: frame numbers that drop-frame leaves out, and figures that are too large", () => {
    for (const [text, rate] of [["00:01:00;00", "29.97 drop"], ["00:01:00;01", "29.97 drop"], ["00:09:00;00", "29.97 drop"], ["00:01:00;02", "59.94 drop"], ["00:00:00:25", "25"], ["00:00:60:00", "25"], ["00:60:00:00", "24"]] as const) {
      expect(() => Timecode(text, Number.parseFloat(rate), rate.endsWith("drop")), text).toThrow();
      expect(() => timecodeToFrames(text, rate), text).toThrow(RangeError);
    }
    for (const text of ["00:10:00;00", "00:01:00;02", "00:01:59;29"]) {
      expect(timecodeToFrames(text, "29.97 drop")).toBe(Timecode(text, 29.97, true).frameCount);
    }
  });
});
