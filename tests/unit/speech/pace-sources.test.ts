import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEFAULT_PACE, fitPace, heardSpeech, paceFromCaptions, paceFromRecording, paceFromTaps, saidWords, slowedPace, speak, type Pace } from "../../../shared/speech";

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

describe("a pace from captions", () => {
  const pace = slowedPace(DEFAULT_PACE, 0.8);

  /** Captions that run on, as a caption program writes them; after `silentAfter` one is left standing over a silence. */
  function captions(silentAfter: number): { start: number; end: number; text: string }[] {
    let at = 12;
    return LINES.map((text, index) => {
      const start = at;
      at += of(pace, text) + (index < LINES.length - 1 ? pace.sentenceSeconds : 0) + (index === silentAfter ? 25 : 0);
      return { start, end: at, text };
    });
  }

  it("is the speaker's, with captions that run on into each other", () => {
    expect(paceFromCaptions(captions(-1))?.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 1);
  });

  it("leaves out a caption that stands over a silence", () => {
    const fit = paceFromCaptions(captions(3));
    expect(fit?.left).toBe(1);
    expect(fit?.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 1);
  });

  it("takes a caption with a gap after it as long as it stands", () => {
    const apart = LINES.map((text, at) => ({ start: at * 20, end: at * 20 + of(pace, text), text }));
    expect(paceFromCaptions(apart)?.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 6);
  });
});

describe("a pace from taps", () => {
  const pace = slowedPace(DEFAULT_PACE, 1.2);
  const taps = LINES.reduce<number[]>((list, text, at) => [...list, (list.at(-1) ?? 0) + of(pace, text) + (at < LINES.length - 1 ? pace.sentenceSeconds : 0)], [3]);

  it("is the reader's", () => {
    expect(paceFromTaps(LINES, taps)?.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 6);
  });

  it("leaves out the line at which the telephone rang, and lines never tapped", () => {
    const interrupted = taps.map((tap, at) => (at > 2 ? tap + 40 : tap));
    expect(paceFromTaps(LINES, interrupted)).toMatchObject({ used: LINES.length - 1, left: 1 });
    expect(paceFromTaps(LINES, taps.slice(0, 4))).toMatchObject({ used: 3, left: LINES.length - 3 });
  });
});

/** A take: bursts of a buzz with silences between, over a room's noise. */
function take(parts: readonly { readonly seconds: number; readonly loud: number }[], rate = 16_000, noise = 0.001): Float32Array {
  const samples = new Float32Array(Math.round(parts.reduce((sum, { seconds }) => sum + seconds, 0) * rate));
  let [at, seed] = [0, 12345];
  for (const { seconds, loud } of parts) {
    const end = Math.min(samples.length, at + Math.round(seconds * rate));
    for (; at < end; at += 1) {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      samples[at] = loud * Math.sin((2 * Math.PI * 140 * at) / rate) + noise * (seed / 1_073_741_824 - 1);
    }
  }
  return samples;
}

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

  it("of a known text gives rate and pauses apart", () => {
    const text = "Stand in the middle of the mat with your feet under your hips. Let your arms hang and feel the ribs come down.";
    const words = saidWords(text, DEFAULT_PACE);
    const voice = words.reduce((sum, { seconds }) => sum + seconds, 0);
    const samples = take([{ seconds: (voice * 0.8) / 2, loud: 0.3 }, { seconds: 0.9, loud: 0 }, { seconds: (voice * 0.8) / 2, loud: 0.3 }]);
    const pace = paceFromRecording(text, samples, 16_000);
    expect((pace?.syllablesPerSecond ?? 0) / DEFAULT_PACE.syllablesPerSecond).toBeCloseTo(1.25, 1);
    expect(pace?.sentenceSeconds).toBeCloseTo(0.9, 1);
  });

  it("that cannot be the text is refused", () => {
    expect(paceFromRecording(LINES[0] ?? "", take([{ seconds: 60, loud: 0.3 }]), 16_000)).toBeNull();
    expect(paceFromRecording("", take(TAKE), 16_000)).toBeNull();
    expect(paceFromRecording("Stand tall.", new Float32Array(100), 16_000)).toBeNull();
  });
});
