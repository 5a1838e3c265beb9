import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heardSpeech } from "../../../../shared/speech";
import { loudnessMeter } from "../../../../shared/speech/recording/loudness";
import { buzz as take } from "./wav";

const TAKE = [{ seconds: 0.7, loud: 0 }, { seconds: 1.5, loud: 0.3 }, { seconds: 0.5, loud: 0 }, { seconds: 2, loud: 0.2 }, { seconds: 0.06, loud: 0 }, { seconds: 1, loud: 0.3 }, { seconds: 1.2, loud: 0 }];

describe("a recording", () => {
  it("is voice and silence, closures of the lips belonging to the voice", () => {
    const heard = heardSpeech(take(TAKE), 16_000);
    expect(heard.from).toBeCloseTo(0.7, 1);
    expect(heard.to).toBeCloseTo(5.76, 1);
    expect(heard.voicedSeconds).toBeCloseTo(4.56, 1);
    expect(heard.pauses).toHaveLength(1);
    expect((heard.pauses[0]?.to ?? 0) - (heard.pauses[0]?.from ?? 0)).toBeCloseTo(0.5, 1);
  });

  it("is heard alike at any gain, rate and in a noisier room", () => {
    const quiet = heardSpeech(take(TAKE).map((value) => value / 8), 16_000);
    const other = heardSpeech(take(TAKE, 44_100), 44_100);
    const noisy = heardSpeech(take(TAKE, 16_000, 0.01), 16_000);
    for (const heard of [quiet, other, noisy]) expect(heard.voicedSeconds).toBeCloseTo(4.56, 1);
  });

  it("is heard where it is little of a long silence", () => {
    const heard = heardSpeech(take([{ seconds: 60, loud: 0 }, { seconds: 1, loud: 0.3 }, { seconds: 40, loud: 0 }], 8000), 8000);
    expect(heard).toMatchObject({ from: expect.closeTo(60, 1) as number, to: expect.closeTo(61, 1) as number, pauses: [] });
  });

  it("of nothing, of an empty room and of one click hold no voice", () => {
    for (const samples of [new Float32Array(0), new Float32Array(16_000), take([{ seconds: 3, loud: 0 }]), take([{ seconds: 1, loud: 0 }, { seconds: 0.01, loud: 0.5 }, { seconds: 1, loud: 0 }])]) {
      expect(heardSpeech(samples, 16_000)).toEqual({ from: 0, to: 0, voicedSeconds: 0, pauses: [] });
    }
  });

  it("gives voice and pauses that add up to the time between first and last sound", () => {
    fc.assert(fc.property(fc.array(fc.record({ seconds: fc.double({ min: 0.05, max: 0.6, noNaN: true }), loud: fc.constantFrom(0, 0.1, 0.4) }), { minLength: 1, maxLength: 12 }), (parts) => {
      const { from, to, voicedSeconds, pauses } = heardSpeech(take(parts, 8000), 8000);
      expect(voicedSeconds + pauses.reduce((sum, pause) => sum + pause.to - pause.from, 0)).toBeCloseTo(to - from, 6);
    }), { numRuns: 60 });
  });

  it("is as loud in pieces of any length as in one, whatever its channels", () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 20 }), fc.integer({ min: 1, max: 3 }), (pieces, channels) => {
      const samples = take([{ seconds: 0.3, loud: 0.2 }], 8000);
      const [whole, inPieces] = [loudnessMeter(8000, channels), loudnessMeter(8000, channels)];
      whole.add(samples);
      let at = 0;
      for (const length of pieces) inPieces.add(samples.subarray(at, (at += length)));
      inPieces.add(samples.subarray(at));
      expect(inPieces.levels).toEqual(whole.levels);
    }), { numRuns: 40 });
  });

  it("keeps its voice when its channels are turned against each other", () => {
    const meter = loudnessMeter(8000, 2);
    meter.add(Float32Array.from({ length: 1600 }, (_, i) => (i % 2 === 0 ? 1 : -1) * 0.5 * Math.sin((2 * Math.PI * 400 * Math.floor(i / 2)) / 8000)));
    for (const level of meter.levels) expect(level).toBeCloseTo(-9.03, 1);
  });
});
