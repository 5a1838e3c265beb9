import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FRAME_RATES } from "../../../shared/episode";
import { framesPerDay, framesToSeconds, framesToTimecode, secondsToFrames, timecodeToFrames } from "../../../shared/filming";

const rates = fc.constantFrom(...FRAME_RATES);

describe("timecode", () => {
  it("comes back as the frame it was made from, at every rate", () => {
    fc.assert(fc.property(rates, fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), (rate, share) => {
      const frame = Math.floor(share * framesPerDay(rate));
      expect(timecodeToFrames(framesToTimecode(frame, rate), rate)).toBe(frame);
    }), { numRuns: 3000 });
  });

  it("never repeats or goes back within the first eleven minutes", () => {
    for (const rate of FRAME_RATES) {
      let before = "";
      for (let frame = 0; frame < 11 * 60 * 60; frame += 1) {
        const timecode = framesToTimecode(frame, rate);
        if (timecode <= before) throw new Error(`${rate}: ${timecode} after ${before}`);
        before = timecode;
      }
      expect(before.startsWith("00:")).toBe(true);
    }
  });

  it("begins again after a day", () => {
    for (const rate of FRAME_RATES) expect(framesToTimecode(framesPerDay(rate), rate)).toBe(framesToTimecode(0, rate));
  });

  it.each([
    ["00:01:00;00", "29.97 drop", '"00:01:00;00" does not exist: drop-frame skips frames 00 to 01 here.'],
    ["00:01:00;03", "59.94 drop", '"00:01:00;03" does not exist: drop-frame skips frames 00 to 03 here.'],
    ["01:00:13:24", "24", '"01:00:13:24": at 24 frames run from 00 to 23.'],
    ["00:60:00:00", "25", '"00:60:00:00": minutes and seconds run from 00 to 59.'],
    ["24:00:00:00", "25", '"24:00:00:00": a day has hours 00 to 23.'],
    ["00:00:10:00", "29.97 drop", '"00:00:10:00": 29.97 drop is written with ";" before the frames.'],
    ["00:00:10;00", "30", '"00:00:10;00": 30 is written with ":" before the frames.'],
    ["10 s", "30", '"10 s" is not a timecode: expected HH:MM:SS:FF.'],
  ] as const)("refuses %s at %s with a sentence", (text, rate, sentence) => {
    expect(() => timecodeToFrames(text, rate)).toThrow(sentence);
  });

  it("refuses half and negative frames", () => {
    expect(() => framesToTimecode(1.5, "25")).toThrow("A frame is a whole number from 0; 1.5 is not.");
    expect(() => framesToTimecode(-1, "25")).toThrow(RangeError);
  });

  it("turns seconds into the nearest frame and back", () => {
    fc.assert(fc.property(rates, fc.integer({ min: 0, max: 10_000_000 }), (rate, frame) => {
      expect(secondsToFrames(framesToSeconds(frame, rate), rate)).toBe(frame);
    }));
    expect(secondsToFrames(1, "29.97")).toBe(30);
    expect(secondsToFrames(3600, "29.97")).toBe(107_892);
  });
});
