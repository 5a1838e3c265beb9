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
  const atPace = (syllablesPerSecond: number) => slowedPace(DEFAULT_PACE, DEFAULT_PACE.syllablesPerSecond / syllablesPerSecond);
  /** The demo read at a pace, exactly. */
  const readAt = (syllablesPerSecond: number): Take[] =>
    lines.map(({ line, text }, i) => take({ id: `t${i}`, line, text, seconds: speak(text, atPace(syllablesPerSecond)).seconds, file: "x.wav" }));
  /** The same with taps: those of `alone` one by one, after a while, the others on and on from one tap. */
  const tapAt = (syllablesPerSecond: number, alone: (line: number) => boolean): Take[] => {
    const pace = atPace(syllablesPerSecond);
    let clock = Date.parse(AT);
    return readAt(syllablesPerSecond).map((one, i) => {
      const seconds = (one.seconds ?? 0) + (alone(i) || i === lines.length - 1 ? 0 : (saidWords(one.text, pace).at(-1)?.pauseSeconds ?? 0));
      clock += seconds * 1000 + (i > 0 && alone(i - 1) ? 5000 : 0);
      return { ...one, file: null, seconds, at: new Date(clock).toISOString() };
    });
  };
  const learn = (takes: readonly Take[]) => learnPace(takes, takes, DEFAULT_PACE, AT);
  const rateOf = (takes: readonly Take[]): number => {
    const learned = learn(takes);
    return learned.ok ? learned.voice.pace.syllablesPerSecond : expect.fail(learned.sentence);
  };

  it.each([2.9, 3.6, 4.8])("is found again from lines read at %d syllables a second", (rate) => {
    const learned = learn(readAt(rate));
    expect(learned).toMatchObject({ ok: true, leftOut: 0, voice: { lines: lines.length, at: AT } });
    expect(learned.ok && learned.voice.pace.syllablesPerSecond).toBeCloseTo(rate, 1);
  });

  it.each([
    ["read on and on", () => false],
    ["read one by one", () => true],
    ["read partly one by one", (line: number) => line % 3 === 0],
  ])("is the same from taps of lines %s: the pause counts only where a tap began the next line", (_how, alone) => {
    for (const rate of [3.6, 4.2]) expect(rateOf(tapAt(rate, alone))).toBeCloseTo(rate, 2);
  });

  it("knows the pause before a line whose take does not count", () => {
    const all = tapAt(4, () => false);
    const counted = all.filter((_, i) => i % 2 === 0);
    const learned = learnPace(counted, all, DEFAULT_PACE, AT);
    expect(learned.ok && learned.voice.pace.syllablesPerSecond).toBeCloseTo(4, 2);
  });

  it("leaves out a line with a long pause to think, and says so", () => {
    const read = readAt(4).map((one, i) => (i === 2 ? { ...one, seconds: (one.seconds ?? 0) * 2.5 } : one));
    const learned = learn(read);
    expect(learned).toMatchObject({ ok: true, leftOut: 1 });
    expect(learned.ok && learned.voice.pace.syllablesPerSecond).toBeCloseTo(4, 1);
  });

  it("counts only the lines and seconds it was measured on, and needs enough of those", () => {
    const slowed = (factors: readonly number[]): Take[] => readAt(4).slice(0, factors.length).map((one, i) => ({ ...one, seconds: (one.seconds ?? 0) * (factors[i] ?? 1) }));
    const five = slowed([1, 1, 1, 2.5, 0.3]);
    const three = five.slice(0, 3).reduce((sum, { seconds }) => sum + (seconds ?? 0), 0);
    expect(learn(five)).toMatchObject({ ok: true, leftOut: 2, voice: { lines: 3, seconds: expect.closeTo(three, 6) as number } });
    for (const factors of [[1, 2.5, 0.3], [1, 1, 2.5], [1, 1, 2.5, 0.3]]) {
      expect(learn(slowed(factors))).toMatchObject({ ok: false, sentence: expect.stringMatching(/^Your pace is measured from 3 lines and 12 seconds on that go at much the same pace; of [34] lines, [\d.]+ seconds, only [12] lines?, [\d.]+ seconds do\./) as string });
    }
  });

  it("is not guessed from too little, or from what cannot be speech", () => {
    expect(learn([])).toEqual({ ok: false, sentence: "Your pace is measured from 3 lines and 12 seconds on; so far nothing was read." });
    expect(learn(readAt(4).slice(0, 2))).toMatchObject({ ok: false, sentence: expect.stringMatching(/so far 2 lines, [\d.]+ seconds were read\.$/) as string });
    expect(learn(readAt(4).map((one) => ({ ...one, seconds: (one.seconds ?? 0) * 30 })))).toMatchObject({ ok: false, sentence: expect.stringMatching(/^These lengths cannot be speech/) as string });
  });
});

describe("a difference", () => {
  it.each([[5, 4.2, "+0.8 s"], [4.2, 5, "−0.8 s"], [5, 5.04, "as planned"]])("of %d to %d reads %s", (measured, planned, words) => expect(difference(measured, planned)).toBe(words));
});
