import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoEpisode } from "../../../shared/episode";
import { DEFAULT_PACE, ownPace, speak, syllablesOf, type Pace } from "../../../shared/speech";

const pace: Pace = { syllablesPerSecond: 4, commaSeconds: 0.3, sentenceSeconds: 0.6, breathSeconds: 0.4 };
const words = fc.constantFrom("push", "the", "floor", "away,", "stand", "tall.", "/", "ten", "kilos", "breathe", "slowly;");
const texts = fc.array(words, { maxLength: 30 }).map((list) => list.join(" "));

describe("spoken seconds", () => {
  it.each([
    ["", 0, 0, 0],
    ["/ , .", 0, 0, 0],
    ["Stand tall.", 0.5, 2, 2],
    ["Stand tall. Breathe.", 0.75 + 0.6, 3, 3],
    ["Stand, breathe", 0.5 + 0.3, 2, 2],
    ["Stand / breathe", 0.5 + 0.4, 2, 2],
    ["Stand. / Breathe", 0.5 + 0.6, 2, 2],
    ["10 kg", 0.75, 2, 3],
  ])("of %j are %f, with %i words and %i syllables", (text, seconds, count, syllables) => {
    const spoken = speak(text, pace);
    expect(spoken.seconds).toBeCloseTo(seconds, 9);
    expect(spoken).toMatchObject({ words: count, syllables });
  });

  it("only grow when words are added", () => {
    fc.assert(fc.property(texts, texts, (a, b) => {
      expect(speak(`${a} ${b}`, pace).seconds).toBeGreaterThanOrEqual(speak(a, pace).seconds - 1e-9);
    }));
  });

  it("halve their speech, not their pauses, at twice the rate", () => {
    fc.assert(fc.property(texts, (text) => {
      const [slow, fast] = [speak(text, pace), speak(text, { ...pace, syllablesPerSecond: 8 })];
      expect(slow.seconds - fast.seconds).toBeCloseTo(slow.syllables / 8, 9);
    }));
  });

  it("are finite and not negative for any text", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => {
      const { seconds } = speak(text);
      expect(Number.isFinite(seconds) && seconds >= 0).toBe(true);
    }));
  });

  it("come out near 145 words a minute for the demo's narration", () => {
    const { seconds, words: count } = speak(demoEpisode.blocks.flatMap(({ lines }) => lines.filter(({ kind }) => kind === "say").map(({ text }) => text)).join(" / "));
    expect((count / seconds) * 60).toBeGreaterThan(140);
    expect((count / seconds) * 60).toBeLessThan(152);
  });
});

describe("a speaker's own pace", () => {
  it("is found back from a reading at that pace", () => {
    const text = "Push the floor away, and stand tall. Breathe at the top, then lower the bell slowly.";
    fc.assert(fc.property(fc.double({ min: 2, max: 8, noNaN: true }), (syllablesPerSecond) => {
      const own = ownPace(text, speak(text, { ...DEFAULT_PACE, syllablesPerSecond }).seconds);
      expect(own?.syllablesPerSecond).toBeCloseTo(syllablesPerSecond, 6);
    }));
  });

  it("is refused when the time cannot be right", () => {
    for (const seconds of [0, -1, 0.1, 600, Number.NaN]) expect(ownPace("Push the floor away.", seconds)).toBeNull();
    expect(ownPace("", 3)).toBeNull();
  });
});

describe("syllables", () => {
  it.each([
    ["squat", 1], ["kettlebell", 3], ["Kettlebells", 3], ["kettlebell's", 3], ["deadlifts", 2], ["glutes", 1], ["isometric", 4],
    ["half-kneeling", 3], ["forty-two", 3], ["presses", 2], ["walked", 1], ["going", 2], ["charged", 1], ["professional", 4], ["W", 3], ["rpe", 1],
    ["", 0], ["12", 0], ["—", 0], ["don’t", 1], ["«squat»", 1],
  ])("of %j are %i", (word, count) => {
    expect(syllablesOf(word)).toBe(count);
  });
});
