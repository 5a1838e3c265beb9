import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEFAULT_PACE, fitPace, slowedPace, speak, type Pace } from "../../../shared/speech";

const LINES = [
  "Stand in the middle of the mat with your feet under your hips.",
  "Let your arms hang, breathe out slowly, and feel the ribs come down.",
  "Hold the bell close to the breastbone and keep the elbows pointing at the floor.",
  "Sit down between the heels.",
  "Push the floor away, stand tall, and do not bounce.",
  "Rest for ninety seconds, and write the number in your notebook.",
  "That was the last one, and it looked like the first.",
];
const factors = fc.double({ min: 0.5, max: 2, noNaN: true });
const of = (pace: Pace, text: string): number => speak(text, pace).seconds;

describe("a pace from samples", () => {
  it("is found back, whatever it was", () => {
    fc.assert(fc.property(factors, (factor) => {
      const pace = slowedPace(DEFAULT_PACE, factor);
      const fit = fitPace(LINES.map((text) => ({ text, seconds: of(pace, text) })));
      expect(fit?.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 6);
      expect(fit?.pace.sentenceSeconds).toBeCloseTo(pace.sentenceSeconds, 6);
      expect(fit).toMatchObject({ used: LINES.length, left: 0 });
    }));
  });

  it("does not mind two samples of seven that measure something else", () => {
    fc.assert(fc.property(factors, fc.double({ min: 2, max: 50, noNaN: true }), fc.subarray([0, 1, 2, 3, 4, 5, 6], { minLength: 1, maxLength: 2 }), (factor, wrong, which) => {
      const pace = slowedPace(DEFAULT_PACE, factor);
      const fit = fitPace(LINES.map((text, at) => ({ text, seconds: of(pace, text) * (which.includes(at) ? wrong : 1) })));
      expect(fit?.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 6);
      expect(fit?.left).toBe(which.length);
    }));
  });

  it("is refused where there is too little or nothing fits a person", () => {
    expect(fitPace([])).toBeNull();
    expect(fitPace([{ text: "Go.", seconds: 0.3 }])).toBeNull();
    expect(fitPace(LINES.map((text) => ({ text, seconds: 600 })))).toBeNull();
    expect(fitPace(LINES.map((text) => ({ text, seconds: Number.NaN })))).toBeNull();
    expect(fitPace([{ text: "", seconds: 4 }, { text: "Stand tall.", seconds: -3 }])).toBeNull();
  });
});

describe("a pace from read lines, tapped one after the other", () => {
  const pace = slowedPace(DEFAULT_PACE, 1.2);
  const tapped = LINES.map((text, at) => ({ text, seconds: of(pace, text) + (at < LINES.length - 1 ? pace.sentenceSeconds : 0), withPause: at < LINES.length - 1 }));

  it("is the reader's, the pause before the next line told from the words", () => {
    expect(fitPace(tapped)?.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 6);
  });

  it("leaves out the line at which the telephone rang, and lines never tapped", () => {
    const interrupted = tapped.map((sample, at) => (at === 2 ? { ...sample, seconds: sample.seconds + 40 } : at === 5 ? { ...sample, seconds: Number.NaN } : sample));
    expect(fitPace(interrupted)).toMatchObject({ used: LINES.length - 2, left: 2 });
  });
});
