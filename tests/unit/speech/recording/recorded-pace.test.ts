import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, emptyEpisode, newLine } from "../../../../shared/episode";
import { DEFAULT_PACE, linesAloud, paceOfRecording, readAloud, saidWords, slowedPace, type Pace, type Recording } from "../../../../shared/speech";

const LINES = [
  "Sit back between your heels, and keep the whole foot on the floor.",
  "Then stand up again. Breathe out on the way.",
  "Three sets of ten with 20 kg, and rest for 90 s between them.",
  "Put the weight down gently and walk around for a while.",
];

/** Lines read exactly at a pace; so many more seconds of silence before each. */
function reading(lines: readonly string[], pace: Pace, waits: readonly number[] = []): Pick<Recording, "seconds" | "heard"> {
  const pauses: { from: number; to: number }[] = [];
  let [at, voicedSeconds] = [waits[0] ?? 0, 0];
  const from = at;
  lines.forEach((text, line) => saidWords(text, pace).forEach(({ seconds, pauseSeconds }, index, words) => {
    at += seconds;
    voicedSeconds += seconds;
    const isLast = index === words.length - 1;
    const quiet = isLast ? pace.sentenceSeconds + (waits[line + 1] ?? 0) : pauseSeconds;
    if (quiet === 0 || (isLast && line === lines.length - 1)) return;
    pauses.push({ from: at, to: at + quiet });
    at += quiet;
  }));
  return { seconds: at + 1, heard: { from, to: at, voicedSeconds, pauses } };
}

const paceOf = (lines: readonly string[], recording: Pick<Recording, "seconds" | "heard">) => {
  const learned = paceOfRecording(lines, recording);
  return learned.ok ? learned : expect.fail(learned.message);
};

describe("lines read aloud into a recording", () => {
  it("give the pace they were read at, however long somebody waited between them", () => {
    fc.assert(fc.property(fc.double({ min: 0.62, max: 1.75, noNaN: true }), fc.array(fc.oneof(fc.constant(0), fc.double({ min: 2, max: 90, noNaN: true })), { maxLength: LINES.length }), (factor, waits) => {
      const pace = slowedPace(DEFAULT_PACE, factor);
      const learned = paceOf(LINES, reading(LINES, pace, waits));
      expect(learned.pace.syllablesPerSecond).toBeCloseTo(pace.syllablesPerSecond, 6);
      expect(learned.pace.sentenceSeconds).toBeCloseTo(pace.sentenceSeconds, 6);
      expect(learned.speechSeconds).toBeCloseTo(readAloud(LINES, pace).seconds, 6);
    }));
  });

  it("leave out silence and nothing else: speech and silence are the whole recording", () => {
    const quiet = reading(LINES, DEFAULT_PACE, [3, 0, 20, 0]);
    const { speechSeconds, silentSeconds } = paceOf(LINES, quiet);
    expect(silentSeconds).toBeCloseTo(3 + 20 + 1, 6);
    expect(speechSeconds + silentSeconds).toBeCloseTo(quiet.seconds, 9);
  });

  it("are counted with the words the series says in its own way", () => {
    const base = { ...DEFAULT_PACE, pronunciations: [{ written: "kg", said: "kilograms, or what you have got instead" }] };
    const { heard, seconds } = reading(LINES, base);
    const [own, plain] = [paceOfRecording(LINES, { heard, seconds }, base), paceOf(LINES, { heard, seconds })];
    expect(own).toMatchObject({ ok: true, pace: { syllablesPerSecond: expect.closeTo(DEFAULT_PACE.syllablesPerSecond, 6) as number } });
    expect(plain.pace.syllablesPerSecond).toBeLessThan(DEFAULT_PACE.syllablesPerSecond);
  });

  it("are refused where half of them, or twice as much, was read", () => {
    const all = readAloud(LINES).seconds.toFixed(0);
    const half = reading(LINES.slice(0, 2), DEFAULT_PACE);
    const twice = reading([...LINES, ...LINES], DEFAULT_PACE);
    expect(paceOfRecording(LINES, half)).toEqual({
      ok: false, code: "too-little",
      message: `About ${half.heard.to.toFixed(0)} s of speech are heard, and these 4 lines take ${all} s at a usual pace: too little for a pace. Read every line, and hand over the whole recording.`,
    });
    expect(paceOfRecording(LINES, twice)).toEqual({
      ok: false, code: "too-much",
      message: `About ${twice.heard.to.toFixed(0)} s of speech are heard, and these 4 lines take ${all} s at a usual pace: too much for these words. Cut out what else was said, and what was said twice.`,
    });
    expect(paceOfRecording(["Sit."], reading(["Sit."], DEFAULT_PACE))).toMatchObject({ ok: false, code: "too-little", message: expect.stringContaining("this line takes") as string });
  });

  it("are refused without words", () => {
    for (const lines of [[], ["", " / ", "..."]]) expect(paceOfRecording(lines, reading(LINES, DEFAULT_PACE))).toEqual({ ok: false, code: "no-words", message: "There are no words the recording could be a reading of." });
  });
});

it("the lines of an episode that are read aloud are its say lines with words, in order", () => {
  const newId = countingIds("aloud");
  const block = (...lines: readonly (readonly ["say" | "cue", string])[]) => emptyBlock(newId, "talk", { lines: lines.map(([kind, text]) => newLine(newId, kind, text)) });
  const episode = emptyEpisode(newId, { blocks: [block(["say", "One."], ["cue", "Not this."], ["say", " / "]), block(), block(["say", "Two."])] });
  expect(linesAloud(episode)).toEqual(["One.", "Two."]);
});
