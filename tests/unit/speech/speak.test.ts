import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, demoEpisode, readEpisode, writeEpisode } from "../../../shared/episode";
import { DEFAULT_PACE, ownPace, paceOf, saidWords, speak, syllablesOf, type Pace } from "../../../shared/speech";

const pace: Pace = { syllablesPerSecond: 4, commaSeconds: 0.3, sentenceSeconds: 0.6, breathSeconds: 0.4 };
const words = fc.constantFrom("push", "the", "floor", "away,", "stand", "tall.", "/", "ten", "kilos", "breathe", "slowly;");
const texts = fc.array(words, { maxLength: 30 }).map((list) => list.join(" "));

describe("spoken seconds", () => {
  it.each([
    ["", 0, 0],
    ["/ , .", 0, 0],
    ["Stand tall.", 2, 2],
    ["Stand tall. Breathe.", 3, 3],
    ["10 kg", 2, 3],
  ])("of %j are those of %i words and %i syllables", (text, count, syllables) => {
    expect(speak(text, pace)).toMatchObject({ words: count, syllables });
    expect(speak(text, pace).seconds > 0).toBe(count > 0);
  });

  it.each([
    ["Stand tall.", "", 0],
    ["Stand tall", "breathe", 0],
    ["Stand tall,", "breathe", 0.3],
    ["Stand tall /", "breathe", 0.4],
    ["Stand tall.", "Breathe", 0.6],
    ["Stand tall. /", "Breathe", 0.6],
    ["Stand tall, /", "breathe", 0.4],
    ["Stand, Mr.", "Hill", 0.3],
    ["Use 10 lb.", "plates", 0],
    ["Use 10 lb.", "Breathe", 0.6],
    ["Do 3 x 8 –", "20 kg", 0.3],
  ])("of %j and then %j hold a silence of %f s", (before, after, silence) => {
    expect(speak(`${before} ${after}`, { ...pace, syllablesPerSecond: 1e12 }).seconds).toBeCloseTo(silence, 6);
  });

  it("are one beat for an average syllable", () => {
    const { seconds, syllables } = speak(demoEpisode.blocks.flatMap(({ lines }) => lines.map(({ text }) => text)).join(" "), { syllablesPerSecond: 4, commaSeconds: 0, sentenceSeconds: 0, breathSeconds: 0 });
    expect((seconds * 4) / syllables).toBeGreaterThan(0.95);
    expect((seconds * 4) / syllables).toBeLessThan(1.05);
  });

  it("grow with stress, with consonants and before a pause", () => {
    const of = (text: string): number => speak(text, pace).seconds;
    expect(of("go to the")).toBeLessThan(of("go two three"));
    expect(of("go on")).toBeLessThan(of("stretched legs"));
    expect(of("arm, leg") - pace.commaSeconds).toBeGreaterThan(of("arm leg"));
  });

  it("only grow when words are added", () => {
    fc.assert(fc.property(texts, texts, (a, b) => {
      expect(speak(`${a} ${b}`, pace).seconds).toBeGreaterThanOrEqual(speak(a, pace).seconds - 1e-9);
    }));
  });

  it("halve their speech, not their pauses, at twice the rate", () => {
    fc.assert(fc.property(texts, (text) => {
      const [slow, fast, silent] = [pace, { ...pace, syllablesPerSecond: 8 }, { ...pace, syllablesPerSecond: 1e12 }].map((one) => speak(text, one).seconds);
      expect((slow ?? 0) - (silent ?? 0)).toBeCloseTo(2 * ((fast ?? 0) - (silent ?? 0)), 6);
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
      const own = ownPace([text], speak(text, { ...DEFAULT_PACE, syllablesPerSecond }).seconds);
      expect(own?.syllablesPerSecond).toBeCloseTo(syllablesPerSecond, 6);
    }));
  });

  it("is refused when the time cannot be right", () => {
    for (const seconds of [0, -1, 0.1, 600, Number.NaN]) expect(ownPace(["Push the floor away."], seconds)).toBeNull();
    expect(ownPace([""], 3)).toBeNull();
  });
});

describe("syllables", () => {
  it.each([
    ["squat", 1], ["kettlebell", 3], ["Kettlebells", 3], ["kettlebell's", 3], ["deadlifts", 2], ["glutes", 1], ["isometric", 4],
    ["half-kneeling", 3], ["forty-two", 3], ["presses", 2], ["walked", 1], ["going", 2], ["charged", 1], ["professional", 4], ["W", 3], ["rpe", 1], ["psoas", 2],
    ["", 0], ["12", 0], ["—", 0], ["don’t", 1], ["«squat»", 1],
  ])("of %j are %i", (word, count) => {
    expect(syllablesOf(word)).toBe(count);
  });
});

describe("the pace of an episode", () => {
  it("is the default until the series knows better", () => {
    expect(paceOf(demoEpisode)).toBe(DEFAULT_PACE);
  });

  it("is the speaker's with the series' pronunciations, and stays the same object", () => {
    const own = { syllablesPerSecond: 4.2, commaSeconds: 0.2, sentenceSeconds: 0.5, breathSeconds: 0.4 };
    const pronunciations = [{ written: "psoas", said: "so as" }];
    const episode = applyEdits(demoEpisode, [{ type: "set-facts", fields: { series: { ...demoEpisode.series, pronunciations } } }]);
    expect(paceOf(episode, own)).toEqual({ ...own, pronunciations });
    expect(paceOf({ ...episode, title: "Other" }, own)).toBe(paceOf(episode, own));
    expect(paceOf(episode, paceOf(episode, own))).toBe(paceOf(episode, own));
  });

  it("survives the file, and a file without it opens as before", () => {
    const series = { ...demoEpisode.series, pronunciations: [{ written: "3RM", said: "three R M" }] };
    const read = readEpisode(writeEpisode({ ...demoEpisode, series }));
    expect(read.ok && read.episode.series).toEqual(series);
    const before = readEpisode(writeEpisode(demoEpisode));
    expect(before.ok && before.episode.series).toEqual(demoEpisode.series);
  });
});

describe("the words as they are said", () => {
  const text = "Keep the bell close, and do 3x8 @ 20 kg.";

  it("are kept per text and pace, and never mixed up between paces", () => {
    const slow = { ...DEFAULT_PACE, syllablesPerSecond: 2 };
    const own = { ...DEFAULT_PACE, pronunciations: [{ written: "bell", said: "heavy round thing" }] };
    expect(saidWords(text, DEFAULT_PACE)).toBe(saidWords(text, DEFAULT_PACE));
    expect(saidWords(text, slow)[0]?.seconds).toBeCloseTo(((saidWords(text, DEFAULT_PACE)[0]?.seconds ?? 0) * 3.6) / 2, 9);
    expect(saidWords(text, own).map(({ word }) => word)).toContain("heavy");
    expect(saidWords(text, DEFAULT_PACE).map(({ word }) => word)).not.toContain("heavy");
  });

  it("stay right after more texts than are kept, and texts too long to be lines are not kept", () => {
    const before = saidWords(text, DEFAULT_PACE);
    for (let i = 0; i < 2100; i += 1) saidWords(`Set ${i}.`, DEFAULT_PACE);
    expect(saidWords(text, DEFAULT_PACE)).not.toBe(before);
    expect(saidWords(text, DEFAULT_PACE)).toEqual(before);
    const long = `${text} `.repeat(40);
    expect(saidWords(long, DEFAULT_PACE)).not.toBe(saidWords(long, DEFAULT_PACE));
    expect(saidWords(long, DEFAULT_PACE)).toHaveLength(before.length * 40);
  });
});
