import { describe, expect, it } from "vitest";
import type { Take } from "../../../../shared/bridge";
import { demoEpisode } from "../../../../shared/episode";
import { DEFAULT_PACE, saidWords, slowedPace, speak } from "../../../../shared/speech";
import { learnPace, linesToRead, takeName, takesOf } from "../../../../renderer/read-through/lines";
import { difference } from "../../../../renderer/read-through/takes-table";

const AT = "2027-03-04T10:00:00.000Z";
const lines = linesToRead(demoEpisode, DEFAULT_PACE);
const take = (fields: Partial<Take>): Take => ({ id: "t", line: "l", text: "Sit.", file: null, seconds: 1, recorded: null, planned: 1, at: AT, chosen: true, ...fields });

describe("lines to read", () => {
  it("are all say lines with words, in order, with the seconds counted for them", () => {
    expect(lines).toHaveLength(demoEpisode.blocks.flatMap((block) => block.lines).filter(({ kind, text }) => kind === "say" && text !== "").length);
    expect(lines[0]?.planned).toBeCloseTo(speak(lines[0]?.text ?? "").seconds);
    expect(takeName(lines[0] ?? expect.fail())).toBe("1 Opening line 1");
  });

  it("know their takes; one of other words or one broken off does not count", () => {
    const all = [take({ id: "a", chosen: false }), take({ id: "b" }), take({ id: "c", line: "other" })];
    expect(takesOf(all, { line: "l", text: "Sit." })).toMatchObject({ all: [{ id: "a" }, { id: "b" }], counts: { id: "b" } });
    expect(takesOf(all, { line: "l", text: "Sit down." })).toMatchObject({ chosen: { id: "b" }, counts: null });
    expect(takesOf([take({ seconds: null })], { line: "l", text: "Sit." }).counts).toBeNull();
  });
});

describe("the pace learned", () => {
  /** The demo read at a pace, exactly. */
  const readAt = (syllablesPerSecond: number): { text: string; seconds: number; file: string | null }[] =>
    lines.map(({ text }) => ({ text, seconds: speak(text, slowedPace(DEFAULT_PACE, DEFAULT_PACE.syllablesPerSecond / syllablesPerSecond)).seconds, file: "x.wav" }));

  it.each([2.9, 3.6, 4.8])("is found again from lines read at %d syllables a second", (rate) => {
    const learned = learnPace(readAt(rate), DEFAULT_PACE, AT);
    expect(learned).toMatchObject({ ok: true, leftOut: 0, voice: { lines: lines.length, at: AT } });
    expect(learned.ok && learned.voice.pace.syllablesPerSecond).toBeCloseTo(rate, 1);
  });

  it("is the same from taps, in which the pause to the next line counts", () => {
    const tapped = readAt(4.2).map((one, i, all) => ({ ...one, file: null, seconds: one.seconds + (i < all.length - 1 ? ((saidWords(one.text, DEFAULT_PACE).at(-1)?.pauseSeconds ?? 0) * 3.6) / 4.2 : 0) }));
    const learned = learnPace(tapped, DEFAULT_PACE, AT);
    expect(learned.ok && learned.voice.pace.syllablesPerSecond).toBeCloseTo(4.2, 2);
  });

  it("leaves out a line with a long pause to think, and says so", () => {
    const read = readAt(4).map((one, i) => (i === 2 ? { ...one, seconds: one.seconds * 2.5 } : one));
    const learned = learnPace(read, DEFAULT_PACE, AT);
    expect(learned).toMatchObject({ ok: true, leftOut: 1 });
    expect(learned.ok && learned.voice.pace.syllablesPerSecond).toBeCloseTo(4, 1);
  });

  it("is not guessed from too little, or from what cannot be speech", () => {
    expect(learnPace([], DEFAULT_PACE, AT)).toEqual({ ok: false, sentence: "Your pace is measured from 3 lines and 12 seconds on; so far nothing was read." });
    expect(learnPace(readAt(4).slice(0, 2), DEFAULT_PACE, AT)).toMatchObject({ ok: false, sentence: expect.stringMatching(/so far 2 lines, [\d.]+ seconds were read\.$/) as string });
    expect(learnPace(readAt(4).map((one) => ({ ...one, seconds: one.seconds * 30 })), DEFAULT_PACE, AT)).toMatchObject({ ok: false, sentence: expect.stringMatching(/^These lengths cannot be speech/) as string });
  });
});

describe("a difference", () => {
  it.each([[5, 4.2, "+0.8 s"], [4.2, 5, "−0.8 s"], [5, 5.04, "as planned"]])("of %d to %d reads %s", (measured, planned, words) => expect(difference(measured, planned)).toBe(words));
});
