import { describe, expect, it, vi } from "vitest";
import type { Api, Take } from "../../../../shared/bridge";
import { countsAtItsEnd, countsAtOnce, withTake } from "../../../../electron/workspace/takes/take-list";
import { createReading, type ReadingDesk } from "../../../../renderer/read-through/reading";
import { takesOf, type LineToRead } from "../../../../renderer/read-through/lines";
import type { Listener } from "../../../../renderer/read-through/microphone";

const lines: LineToRead[] = ["Sit back.", "Stand up.", "Breathe out."].map((text, i) => ({ line: `l${i}`, text, block: "1 Opening", number: i + 1, planned: 1 }));
const RATE = 1000;

/** A desk over a host that keeps takes in memory, with hands on the clock and the microphone. */
function desk(opens: "opens" | "opens muted" | "refused" = "opens") {
  let [now, made] = [0, 0];
  let listener: Listener | null = null;
  const takes: Take[] = [];
  const lengths = new Map<string, number>();
  /** `until`: the disk answers only then. */
  const fails = { append: false, until: Promise.resolve() };
  const keep = (take: Take): Take => {
    takes.splice(0, takes.length, ...withTake(takes, take));
    return take;
  };
  const add = (line: string, text: string, fields: Partial<Take>): Take =>
    keep({ id: `t${++made}`, line, text, file: null, seconds: null, recorded: null, planned: 1, at: "2027-03-04T10:00:00.000Z", chosen: true, ...fields });
  const answers: Partial<Api> = {
    "takes:list": async () => ({ ok: true, folder: "/library/takes/a", takes: [] }),
    "takes:tap": async ({ line, text, seconds }) => ({ ok: true, take: add(line, text, { seconds }) }),
    "takes:begin": async ({ line, text, name }) => ({ ok: true, take: add(line, text, { file: `${name}.wav`, chosen: countsAtOnce(takes, line) }) }),
    "takes:append": async ({ take, after, samples }) => {
      await fails.until;
      if (fails.append) return { ok: false, code: "disk-full", message: "The disk is full." };
      lengths.set(take, after + Buffer.from(samples, "base64").length / 2);
      return { ok: true, samples: lengths.get(take) ?? 0 };
    },
    "takes:end": async ({ take: id, seconds }) => {
      const take = takes.find((one) => one.id === id) ?? expect.fail();
      const ended = { ...take, seconds, recorded: (lengths.get(id) ?? 0) / RATE };
      return { ok: true, take: keep({ ...ended, chosen: countsAtItsEnd(takes, ended) }) };
    },
  };
  const made_: ReadingDesk = createReading({
    api: answers as Api, file: "a.episode.json", lines: () => lines, now: () => now,
    openMicrophone: async (hears) => {
      if (opens === "refused") return { ok: false, sentence: "The microphone was refused." };
      listener = hears;
      if (opens === "opens muted") hears.onMuted(true);
      return { ok: true, microphone: { name: "Test microphone", rate: RATE, close: () => undefined } };
    },
  });
  return {
    desk: made_, takes, fails,
    pass: (seconds: number): void => void (now += seconds * 1000),
    /** Sound of a loudness for some time, in pieces of a fiftieth of a second; the clock goes on with it. */
    hear: (rms: number, seconds: number): void => {
      for (let i = 0; i < Math.round(seconds * 50); i++) {
        now += 20;
        listener?.onSamples(new Float32Array(RATE / 50).fill(rms));
      }
    },
    unplug: (): void => listener?.onGone("The microphone is gone: it was unplugged or taken away."),
    mute: (isMuted: boolean): void => listener?.onMuted(isMuted),
    settle: (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5)),
  };
}

describe("reading with taps", () => {
  it("times each line from tap to tap and stops after the last", async () => {
    const { desk: reading, pass, settle, takes } = desk();
    reading.start(0);
    for (const seconds of [1.2, 2.5, 0.9]) {
      pass(seconds);
      reading.next();
    }
    await settle();
    expect(takes.map(({ line, seconds }) => [line, seconds])).toEqual([["l0", 1.2], ["l1", 2.5], ["l2", 0.9]]);
    expect(reading.state.get()).toMatchObject({ phase: "done" });
  });

  it("says after the last line that it was the last, and begins nothing however often the pedal is pressed", async () => {
    const { desk: reading, pass, settle, takes } = desk();
    for (let press = 0; press < 4; press++) {
      reading.forward();
      pass(1);
    }
    await settle();
    for (let press = 0; press < 2; press++) reading.forward();
    expect(reading.state.get()).toMatchObject({ phase: "done", message: "That was the last line; all are read. To read more, choose a button or a line." });
    reading.stop();
    await settle();
    expect(takes.map(({ line }) => line)).toEqual(["l0", "l1", "l2"]);
    reading.start(0);
    expect(reading.state.get()).toMatchObject({ phase: "reading", at: 0, message: null });
  });

  it.each([[1, "1 line is"], [2, "2 lines are"]])("says after the last line that %d before it were left out", async (from, words) => {
    const { desk: reading, pass, settle } = desk();
    reading.start(from);
    for (let line = from; line < lines.length; line++) {
      pass(1);
      reading.next();
    }
    await settle();
    pass(1);
    reading.forward();
    expect(reading.state.get().message).toBe(`That was the last line; ${words} not read yet. To read more, choose a button or a line.`);
  });

  it("reads one line again and keeps both takes; the newer counts", async () => {
    const { desk: reading, pass, settle } = desk();
    reading.start(0);
    pass(1);
    reading.next();
    reading.retake(0);
    pass(1.5);
    reading.next();
    await settle();
    expect(reading.state.get()).toMatchObject({ phase: "ready", at: 0, takes: [{ seconds: 1, chosen: false }, { seconds: 1.5, chosen: true }] });
  });

  it("notes nothing for a line that was stopped or begun again", async () => {
    const { desk: reading, pass, settle, takes } = desk();
    reading.start(1);
    pass(1);
    reading.again();
    pass(0.5);
    reading.stop();
    await settle();
    expect(takes).toEqual([]);
    expect(reading.state.get()).toMatchObject({ phase: "ready", at: 1 });
  });
});

describe("presses that are no reading", () => {
  it("of a bouncing pedal are one press: nothing is noted, and the line goes on", async () => {
    const { desk: reading, pass, settle, takes } = desk();
    for (let press = 0; press < 8; press++) {
      reading.forward();
      pass(0.06);
    }
    expect(reading.state.get()).toMatchObject({ phase: "reading", at: 0, message: null });
    pass(1);
    for (let press = 0; press < 4; press++) {
      reading.forward();
      pass(0.06);
    }
    await settle();
    expect(takes.map(({ line, seconds }) => [line, seconds])).toEqual([["l0", expect.closeTo(1.48)]]);
    expect(reading.state.get()).toMatchObject({ phase: "reading", at: 1 });
    pass(1);
    reading.next();
    reading.next();
    expect(reading.state.get()).toMatchObject({ phase: "reading", at: 2 });
  });

  it.each([[0.31, []], [0.34, [["l0", 0.34]]]])("of a line of 1 s after %d s note %j, and go on", async (after, noted) => {
    const { desk: reading, pass, settle, takes } = desk();
    reading.start(0);
    pass(after);
    reading.next();
    await settle();
    expect(takes.map(({ line, seconds }) => [line, seconds])).toEqual(noted);
    expect(reading.state.get()).toMatchObject({ phase: "reading", at: 1, message: noted.length > 0 ? null : "0.3 s is too short for line 1, which takes about 1.0 s: nothing was noted for it." });
  });

  it("leave a recorded good take in its place, with taps and with the microphone", async () => {
    const { desk: reading, hear, pass, settle } = desk();
    await reading.useMicrophone();
    reading.retake(0);
    hear(0.2, 1.2);
    reading.next();
    reading.retake(0);
    hear(0, 0.4);
    hear(0.2, 0.2);
    hear(0, 0.4);
    reading.next();
    await settle();
    expect(reading.state.get()).toMatchObject({ phase: "ready", message: "0.2 s is too short for line 1, which takes about 1.0 s: its recording is kept, but does not count." });
    reading.dropMicrophone();
    reading.retake(0);
    pass(0.32);
    reading.next();
    await settle();
    expect(reading.state.get().takes).toMatchObject([{ seconds: expect.closeTo(1.2) as number, chosen: true }, { seconds: null, recorded: 1, chosen: false }]);
  });
});

describe("reading with the microphone", () => {
  it("measures from the first sound to the last, whenever the tap comes, and records from tap to tap", async () => {
    const { desk: reading, hear, settle, takes } = desk();
    await reading.useMicrophone();
    expect(reading.state.get().microphone).toEqual({ state: "on", name: "Test microphone" });
    reading.start(0);
    hear(0, 0.4);
    hear(0.2, 1.3);
    hear(0, 0.8);
    reading.next();
    hear(0.2, 1);
    reading.stop();
    await settle();
    expect(takes).toMatchObject([{ line: "l0", seconds: expect.closeTo(1.3) as number, recorded: 2.5 }, { line: "l1", seconds: null, recorded: 1 }]);
  });

  it("keeps a good take in its place while the line is read again, and when that is broken off", async () => {
    const { desk: reading, hear, settle } = desk();
    await reading.useMicrophone();
    reading.retake(0);
    hear(0.2, 1.2);
    reading.next();
    reading.retake(0);
    hear(0.2, 0.4);
    reading.stop();
    await settle();
    expect(reading.state.get().takes).toMatchObject([{ seconds: expect.closeTo(1.2) as number, chosen: true }, { seconds: null, chosen: false }]);
    expect(takesOf(reading.state.get().takes, lines[0] ?? expect.fail()).counts?.seconds).toBeCloseTo(1.2);
  });

  it("goes on by itself after a pause, when asked to, and not in a breath", async () => {
    const { desk: reading, hear, settle, takes } = desk();
    await reading.useMicrophone();
    reading.setGoesOn(true);
    reading.start(0);
    for (let i = 0; i < 3; i++) {
      hear(0.2, 0.6);
      hear(0, 0.7);
      hear(0.2, 0.6);
      hear(0, 1.3);
    }
    await settle();
    expect(takes.map(({ line, seconds }) => [line, seconds])).toEqual(["l0", "l1", "l2"].map((line) => [line, expect.closeTo(1.9, 1)]));
    expect(reading.state.get().phase).toBe("done");
  });

  it("says when nothing was heard, and keeps the recording", async () => {
    const { desk: reading, hear, settle, takes } = desk();
    await reading.useMicrophone();
    reading.start(0);
    hear(0.0001, 2);
    reading.next();
    await settle();
    expect(reading.state.get().message).toMatch(/^Nothing was heard on that line\./);
    expect(takes[0]).toMatchObject({ seconds: null, recorded: 2 });
  });
});

describe("what goes wrong", () => {
  it("a refused microphone is a sentence, and taps still work", async () => {
    const { desk: reading, pass, settle, takes } = desk("refused");
    await reading.useMicrophone();
    expect(reading.state.get()).toMatchObject({ microphone: { state: "off" }, message: "The microphone was refused." });
    reading.start(0);
    pass(1);
    reading.next();
    await settle();
    expect(takes).toMatchObject([{ seconds: 1, file: null }]);
  });

  it("a microphone unplugged in the middle of a take loses nothing", async () => {
    const { desk: reading, hear, unplug, pass, settle, takes } = desk();
    await reading.useMicrophone();
    reading.start(0);
    hear(0.2, 1.7);
    unplug();
    await settle();
    expect(takes).toMatchObject([{ line: "l0", seconds: null, recorded: 1.7 }]);
    expect(reading.state.get()).toMatchObject({
      phase: "ready", at: 0, microphone: { state: "off" },
      message: "The microphone is gone: it was unplugged or taken away. What was recorded of this line, 1.7 s, is kept. Plug it in and read the line again, or go on with taps.",
    });
    reading.start(0);
    pass(2);
    reading.next();
    await settle();
    expect(takes[1]).toMatchObject({ seconds: 2, file: null });
  });

  it("a microphone muted in the middle of a take keeps what was recorded, says so, and records nothing until it is heard again", async () => {
    const { desk: reading, hear, mute, settle, takes } = desk();
    await reading.useMicrophone();
    reading.start(0);
    hear(0.2, 1.7);
    mute(true);
    await settle();
    expect(takes).toMatchObject([{ line: "l0", seconds: null, recorded: 1.7 }]);
    expect(reading.state.get()).toMatchObject({
      phase: "ready", at: 0, microphone: { state: "muted", name: "Test microphone" },
      message: "The microphone is muted: the system or a switch on it keeps its sound back. What was recorded of this line, 1.7 s, is kept. Turn it on again and read the line again, or go on without it.",
    });
    expect(reading.moment()).toMatchObject({ share: 0, word: "silent" });
    reading.forward();
    reading.retake(1);
    expect(reading.state.get()).toMatchObject({ phase: "ready", at: 1, isRetake: false, message: "The microphone is muted: the system or a switch on it keeps its sound back. Turn it on again, or go on without it." });
    mute(false);
    expect(reading.state.get()).toMatchObject({ microphone: { state: "on" }, message: "The microphone is heard again." });
    reading.start(0);
    hear(0.2, 1);
    reading.next();
    await settle();
    expect(takes[1]).toMatchObject({ line: "l0", seconds: expect.closeTo(1) as number, chosen: true });
  });

  it("a microphone that is muted when it is opened says so, and taps still work without it", async () => {
    const { desk: reading, pass, settle, takes } = desk("opens muted");
    await reading.useMicrophone();
    expect(reading.state.get()).toMatchObject({ microphone: { state: "muted" }, message: "The microphone is muted: the system or a switch on it keeps its sound back. Turn it on again, or go on without it." });
    reading.dropMicrophone();
    reading.start(0);
    pass(1);
    reading.next();
    await settle();
    expect(takes).toMatchObject([{ seconds: 1, file: null }]);
  });

  it("the loudness is that of now: without a piece of sound for half a second it is none", async () => {
    const { desk: reading, hear, pass } = desk();
    await reading.useMicrophone();
    hear(0.1, 0.2);
    pass(0.4);
    expect(reading.moment()).toMatchObject({ word: "good" });
    pass(0.2);
    expect(reading.moment()).toMatchObject({ share: 0, word: "silent" });
  });

  it("a full disk leaves the sound in memory until it can be written", async () => {
    const { desk: reading, hear, fails, settle, takes } = desk();
    await reading.useMicrophone();
    fails.append = true;
    reading.start(0);
    hear(0.2, 1.5);
    reading.next();
    reading.stop();
    await settle();
    expect(reading.state.get()).toMatchObject({ unwritten: 1, message: "The disk is full. The sound is still here in memory: try again before you leave." });
    fails.append = false;
    await reading.writeAgain();
    expect(reading.state.get()).toMatchObject({ unwritten: 0, message: null });
    expect(takes[0]).toMatchObject({ seconds: expect.closeTo(1.5) as number, recorded: 1.5 });
  });

  it("leaving in the middle of a take that cannot be written warns of its sound, once, and again of the next", async () => {
    const { desk: reading, hear, fails, settle, takes } = desk();
    await reading.useMicrophone();
    fails.append = true;
    reading.start(0);
    hear(0.2, 0.6);
    expect(await reading.leave()).toBe(false);
    expect(reading.state.get()).toMatchObject({ phase: "ready", unwritten: 1, warnedOf: 1 });
    expect(await reading.leave()).toBe(true);

    fails.append = false;
    await reading.writeAgain();
    expect(reading.state.get()).toMatchObject({ unwritten: 0, warnedOf: 0 });
    expect(takes[0]).toMatchObject({ recorded: 0.6 });
    fails.append = true;
    reading.start(1);
    hear(0.2, 0.5);
    reading.stop();
    await settle();
    expect(await reading.leave()).toBe(false);
    // Trying again in vain is no consent to lose it.
    await reading.writeAgain();
    expect(await reading.leave()).toBe(false);
    fails.append = false;
    await reading.writeAgain();
    expect(await reading.leave()).toBe(true);
    expect(takes).toMatchObject([{ recorded: 0.6 }, { recorded: 0.5 }]);
  });

  it("leaving waits for a take that is still being written, and warns when the disk takes too long", async () => {
    const { desk: reading, hear, fails, settle, takes } = desk();
    await reading.useMicrophone();
    fails.until = new Promise((resolve) => setTimeout(resolve, 20));
    reading.start(0);
    hear(0.2, 0.6);
    const [first, second] = [reading.leave(), reading.leave()];
    expect([await first, await second]).toEqual([true, true]);
    expect(takes).toMatchObject([{ recorded: 0.6 }]);

    fails.until = new Promise(() => undefined);
    reading.start(1);
    hear(0.2, 0.6);
    vi.useFakeTimers();
    const answers = Promise.all([reading.leave(), reading.leave()]);
    await vi.advanceTimersByTimeAsync(6000);
    vi.useRealTimers();
    expect(await answers).toEqual([false, false]);
    await settle();
    expect(reading.state.get()).toMatchObject({ warnedOf: 1 });
  });

  it("leaving in the middle of a take keeps what was recorded", async () => {
    const { desk: reading, hear, takes } = desk();
    await reading.useMicrophone();
    reading.start(2);
    hear(0.2, 0.6);
    await reading.close();
    expect(takes).toMatchObject([{ line: "l2", seconds: null, recorded: 0.6 }]);
  });
});
