import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breaths, DEFAULT_PACE, sentencesOf, speak } from "../../../shared/speech";

const LONG = "Keep the ribs over the hips and the bell close to the chest while you sit between the heels with your elbows inside the knees and your eyes on the wall";
const words = fc.constantFrom("push", "the", "floor", "away,", "and", "but", "stand", "tall.", "/", "10", "kg", "with", "breathe", "slowly;", "to", "8-10", "e.g.", "shoulders");
const texts = fc.array(words, { maxLength: 60 }).map((list) => list.join(" "));

describe("breaths", () => {
  it("keep the marked ones and the sentence ends of a short text", () => {
    expect(breaths("Lie down. Reach / and hold.").map(({ text, breathAfter }) => [text, breathAfter])).toEqual([
      ["Lie down.", "sentence"], ["Reach", "marked"], ["and hold.", null],
    ]);
  });

  it("call a breath after a sentence marked when the coach marked it", () => {
    expect(breaths("Lie down. / Reach.")[0]?.breathAfter).toBe("marked");
  });

  it("are suggested before conjunctions in a stretch without a comma", () => {
    const segments = breaths(LONG, DEFAULT_PACE, 6);
    expect(segments.length).toBeGreaterThan(1);
    expect(segments.slice(0, -1).every(({ breathAfter }) => breathAfter === "suggested")).toBe(true);
    for (const { text } of segments.slice(1)) expect(text).toMatch(/^(and|while|with) /);
  });

  it("prefer a comma to a conjunction", () => {
    const segments = breaths("Set the bench at about thirty degrees and lie chest down, then let both arms hang and pull the elbows back", DEFAULT_PACE, 5);
    expect(segments.map(({ text }) => text)).toContain("Set the bench at about thirty degrees and lie chest down,");
  });

  it("leave a figure with its unit and a short form whole", () => {
    for (const { text } of breaths("hold the bell of 10 kg for 30 s e.g. on a box of 45 cm and press the floor away from you", DEFAULT_PACE, 1)) {
      expect(text).not.toMatch(/\d$/);
    }
  });

  it("let no stretch of plain words be longer than asked for", () => {
    fc.assert(fc.property(texts, fc.double({ min: 1, max: 8, noNaN: true }), (text, most) => {
      for (const segment of breaths(text, DEFAULT_PACE, most)) {
        const single = segment.text.split(" ").length === 1 || /\d|e\.g\./.test(segment.text);
        if (!single) expect(segment.seconds).toBeLessThanOrEqual(most + 1e-9);
      }
    }), { numRuns: 500 });
  });

  it("are found in a long run of figures, each figure with its unit", () => {
    for (const text of [Array.from({ length: 40 }, (_, at) => `${10 + at}kg`).join(" "), Array.from({ length: 40 }, (_, at) => `${10 + at} kg,`).join(" "), Array.from({ length: 40 }, (_, at) => `${at % 2 ? "3x8" : "@"} ${at}`).join(" ")]) {
      const segments = breaths(text);
      expect(segments.length).toBeGreaterThan(5);
      for (const segment of segments) expect(segment.seconds).toBeLessThanOrEqual(6 + 1e-9);
      for (const segment of segments.filter(() => text.includes("kg"))) expect(segment.text).toMatch(/kg,?$/);
    }
  });

  it("let nothing but one word, or a figure with its unit, be longer than asked for, whatever the text", () => {
    const piece = fc.oneof(
      words, fc.constantFrom("10kg", "3x8-10", "@", "42.5", "tempo", "3-1-1-0,", "1:30", "45″", "£1.50", "%", "123456789012345", "–", "(", "and/or", "a".repeat(400), "...", "2027-03-04", "w/", "1x", "per", "week"),
      fc.string({ maxLength: 12 }),
    );
    const any = fc.oneof(fc.array(piece, { maxLength: 50 }).map((list) => list.join(" ")), fc.string({ maxLength: 200 }), fc.tuple(piece, fc.integer({ min: 2, max: 60 })).map(([one, times]) => Array(times).fill(one).join(" ")));
    fc.assert(fc.property(any, fc.double({ min: 0.5, max: 8, noNaN: true }), (text, most) => {
      for (const segment of breaths(text, DEFAULT_PACE, most)) {
        if (!/^\s*\S+(?:(?<=\d)\s+\p{L}\S*)?\s*$/u.test(segment.text)) expect(segment.seconds).toBeLessThanOrEqual(most + 1e-6);
      }
    }), { numRuns: 600 });
  });

  it("keep every word, in order", () => {
    fc.assert(fc.property(texts, (text) => {
      const kept = breaths(text, DEFAULT_PACE, 2).flatMap((segment) => segment.text.split(/\s+/)).filter(Boolean);
      expect(kept).toEqual(text.split(/\s+/).filter((word) => word && word !== "/"));
    }));
  });

  it("add up to the spoken seconds when none had to be suggested", () => {
    const text = "Lie down, and breathe. / Reach up. Hold it / and let go.";
    const pauses = { marked: DEFAULT_PACE.breathSeconds, sentence: DEFAULT_PACE.sentenceSeconds, suggested: Number.NaN };
    const total = breaths(text).reduce((sum, { seconds, breathAfter }) => sum + seconds + (breathAfter ? pauses[breathAfter] : 0), 0);
    // the breath marked after the first sentence is covered by the sentence's longer pause
    expect(total + pauses.sentence - pauses.marked).toBeCloseTo(speak(text).seconds, 9);
  });

  it("of nothing are none", () => {
    expect(breaths("")).toEqual([]);
    expect(breaths(" / ")).toEqual([]);
  });
});

describe("sentences", () => {
  it.each([
    ["Sit. Stand! Ready? Yes…", ["Sit.", "Stand!", "Ready?", "Yes…"]],
    ["Use a support, e.g. a box. Then go.", ["Use a support, e.g. a box.", "Then go."]],
    ["Take 42.5 kg. Rest.", ["Take 42.5 kg.", "Rest."]],
    ["no end", ["no end"]],
    ["", []],
  ])("of %j", (text, sentences) => {
    expect(sentencesOf(text)).toEqual(sentences);
  });
});

describe("the sentences of a text", () => {
  it.each([
    ["Mr. Hill is here. He waits.", ["Mr. Hill is here.", "He waits."]],
    ["Use 10 lb. plates. Rest 5 min. Then go.", ["Use 10 lb. plates.", "Rest 5 min.", "Then go."]],
    ["Bands, balls, etc. and more. Balls, etc. Then rest.", ["Bands, balls, etc. and more.", "Balls, etc.", "Then rest."]],
    ["See Ep. 4. On Elm St. we turn.", ["See Ep. 4.", "On Elm St. we turn."]],
    ["Is it no. 3? No. 3 sets is plenty.", ["Is it no. 3?", "No.", "3 sets is plenty."]],
    ["J. R. Hill stands at mark A. Then he turns.", ["J. R. Hill stands at mark A.", "Then he turns."]],
    ["Start on Mar. 4 at 6 a.m. sharp.", ["Start on Mar. 4 at 6 a.m. sharp."]],
  ])("end at no short form that goes on: %j", (text, sentences) => {
    expect(sentencesOf(text)).toEqual(sentences);
  });
});
