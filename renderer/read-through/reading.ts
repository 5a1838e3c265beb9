import type { Api, Take } from "../../shared/bridge";
import { createStore, type Store } from "../session/store";
import { createHearing, levelOf } from "./hearing";
import { count } from "../words/count";
import { takeName, takesOf, type LineToRead } from "./lines";
import type { Listener, Microphone } from "./microphone";
import { loudness, toSamples } from "./samples";
import { createTakeWriter, type TakeEnd, type TakeWriter } from "./take-writer";

export interface Reading {
  /** The line at hand, by its place in the list. */
  readonly at: number;
  readonly phase: "ready" | "reading" | "done";
  /** Only this line is read, then it stops. */
  readonly isRetake: boolean;
  /** "muted": open, but the system or its own switch keeps its sound back. */
  readonly microphone: { readonly state: "off" | "asking" | "on" | "muted"; readonly name: string };
  /** Goes on by itself after a pause; needs the microphone. */
  readonly goesOn: boolean;
  readonly takes: readonly Take[];
  /** Where the sound files lie; null until one was asked for. */
  readonly folder: string | null;
  /** What went wrong last, or what to know; one sentence. */
  readonly message: string | null;
  /** Takes whose sound is in memory only. */
  readonly unwritten: number;
  /** Takes that would be lost, of which the reader was told on leaving; 0 when there was nothing to tell. */
  readonly warnedOf: number;
}

export interface ReadingDesk {
  readonly state: Store<Reading>;
  /** How loud it is now, and seconds of the take at hand; read on every frame. */
  readonly moment: () => { readonly share: number; readonly word: string; readonly seconds: number };
  readonly load: () => Promise<void>;
  readonly useMicrophone: () => Promise<void>;
  readonly dropMicrophone: () => void;
  readonly setGoesOn: (goesOn: boolean) => void;
  /** Begins at a line and goes on to the next ones. */
  readonly start: (at: number) => void;
  /** Reads one line again and stops after it. */
  readonly retake: (at: number) => void;
  /** A tap: this line is over. */
  readonly next: () => void;
  /** The one press of a pedal: begins, goes on, and after the last line says that it was the last. */
  readonly forward: () => void;
  /** The same line from its beginning; what was read of it stays a take. */
  readonly again: () => void;
  readonly stop: () => void;
  readonly choose: (take: string) => Promise<void>;
  readonly sound: (take: string) => Promise<string | null>;
  /** Writes again what could not be written. */
  readonly writeAgain: () => Promise<void>;
  /** Stops, waits until what was read is written, and tells once of sound that would be lost. @returns whether it is time to close */
  readonly leave: () => Promise<boolean>;
  readonly close: () => Promise<void>;
}

export interface DeskSetup {
  readonly api: Api;
  /** The episode's file in the library. */
  readonly file: string;
  /** As they are counted at the present pace; always the same words. */
  readonly lines: () => readonly LineToRead[];
  readonly openMicrophone: (listener: Listener) => Promise<{ ok: true; microphone: Microphone } | { ok: false; sentence: string }>;
  /** Milliseconds, going up. */
  readonly now: () => number;
}

/** A pause this long after enough words ends a line; seconds. Longer than a sentence's end or a breath. */
const PAUSE_ENDS = 1.1;
/** Said at least this share of the counted seconds before a pause may end the line. */
const ENOUGH = 0.55;

/** A press this soon after the last one, or after a line began by itself, is that one bouncing or a slip of the finger. Milliseconds. */
const BOUNCE = 300;
/** Nobody says words in less than this share of the counted seconds. */
const LEAST_SHARE = 1 / 3;

/** Without a piece of sound for this long nothing is known of the loudness. Milliseconds. */
const STALE = 500;
const MUTED = "The microphone is muted: the system or a switch on it keeps its sound back.";
/** A reader who leaves waits at most this long for the disk. Milliseconds. */
const PATIENCE = 5000;

/** Carries a read-through: taps, the microphone, takes. Draws nothing. */
export function createReading({ api, file, lines, openMicrophone, now }: DeskSetup): ReadingDesk {
  const state = createStore<Reading>({
    at: 0, phase: "ready", isRetake: false, microphone: { state: "off", name: "" }, goesOn: false, takes: [], folder: null, message: null, unwritten: 0, warnedOf: 0,
  });
  const patch = (change: Partial<Reading>): void => state.set({ ...state.get(), ...change });
  const hearing = createHearing();
  const broken = new Set<TakeWriter>();
  const ending = new Set<TakeWriter>();
  const underWay = new Set<Promise<unknown>>();
  let microphone: Microphone | null = null;
  let writer: TakeWriter | null = null;
  let begunAt = 0;
  let pressedAt = Number.NEGATIVE_INFINITY;
  let level = levelOf(0, 0);
  let heardAt = 0;
  let isMuted = false;
  let isClosed = false;
  let leaving: Promise<boolean> | null = null;

  const withTake = (take: Take): void => {
    const { takes } = state.get();
    const others = takes.filter(({ id }) => id !== take.id).map((one) => (take.chosen && one.line === take.line ? { ...one, chosen: false } : one));
    patch({ takes: [...others, take] });
  };
  const track = <T>(work: Promise<T>): Promise<T> => {
    underWay.add(work);
    void work.finally(() => underWay.delete(work)).catch(() => undefined);
    return work;
  };

  const closeTake = async (done: TakeWriter, end: Promise<TakeEnd>): Promise<void> => {
    ending.add(done);
    const answer = await end;
    ending.delete(done);
    if (answer.ok) {
      broken.delete(done);
      withTake(answer.take);
    } else broken.add(done);
    if (broken.size + ending.size === 0) patch({ warnedOf: 0 });
    patch({ unwritten: broken.size, ...(answer.ok ? {} : { message: `${answer.sentence} The sound is still here in memory: try again before you leave.` }) });
  };

  const tapped = async (line: LineToRead, seconds: number): Promise<void> => {
    try {
      const answer = await api["takes:tap"]({ file, line: line.line, text: line.text, name: takeName(line), planned: line.planned, seconds });
      if (answer.ok) withTake(answer.take);
      else patch({ message: answer.message });
    } catch (error) {
      patch({ message: `The take was not noted. ${error instanceof Error ? error.message : String(error)}` });
    }
  };

  const begin = (at: number): void => {
    const line = lines()[at];
    if (!line) return;
    if (state.get().microphone.state === "muted") return patch({ at, phase: "ready", isRetake: false, message: `${MUTED} Turn it on again, or go on without it.` });
    begunAt = pressedAt = now();
    hearing.begin();
    if (microphone) {
      writer = createTakeWriter(api, { file, line: line.line, text: line.text, name: takeName(line), planned: line.planned, rate: microphone.rate }, (message) => patch({ message }));
    }
    patch({ at, phase: "reading", warnedOf: 0 });
  };

  /** A bouncing pedal presses many times; each of its presses is one of the first. */
  const isBounce = (): boolean => {
    const bounces = now() - pressedAt < BOUNCE;
    pressedAt = now();
    return bounces;
  };

  /** Closes the take at hand. `isWhole`: the line was read to its end. What is far too short for its words is no take that counts. */
  const end = (isWhole: boolean): void => {
    const { at, phase } = state.get();
    const line = lines()[at];
    if (!line || phase !== "reading") return;
    const done = writer;
    writer = null;
    const said = done ? hearing.span() : (now() - begunAt) / 1000;
    const counts = isWhole && said !== null && said >= LEAST_SHARE * line.planned;
    if (isWhole && said === null) patch({ message: "Nothing was heard on that line. Is the right microphone chosen, and is it not muted? Its recording is kept." });
    else if (isWhole && !counts) patch({ message: `${(said ?? 0).toFixed(1)} s is too short for line ${at + 1}, which takes about ${line.planned.toFixed(1)} s: ${done ? "its recording is kept, but does not count" : "nothing was noted for it"}.` });
    if (done) void track(closeTake(done, done.end(counts ? said : null)));
    else if (counts) void track(tapped(line, said));
  };

  const goOn = (): void => {
    const { at, phase, isRetake } = state.get();
    if (phase !== "reading") return;
    patch({ message: null });
    end(true);
    if (isRetake) patch({ phase: "ready", isRetake: false });
    else if (at + 1 < lines().length) begin(at + 1);
    else patch({ phase: "done" });
  };

  const stop = (): void => {
    if (state.get().phase !== "reading") return;
    end(false);
    patch({ phase: "ready", isRetake: false });
  };
  const start = (at: number): void => {
    stop();
    patch({ message: null, isRetake: false });
    begin(at);
  };
  const next = (): void => {
    if (!isBounce()) goOn();
  };
  const forward = (): void => {
    const { at, phase, takes } = state.get();
    if (isBounce()) return;
    if (phase === "reading") return goOn();
    if (phase === "ready") return start(at);
    // One press too many after the last line is easily made; it must not begin a take of the first.
    const unread = lines().filter((line) => takesOf(takes, line).counts === null).length;
    patch({ message: `That was the last line; ${unread === 0 ? "all are read" : `${count(unread, "line")} ${unread === 1 ? "is" : "are"} not read yet`}. To read more, choose a button or a line.` });
  };

  const onSamples = (sound: Float32Array): void => {
    const { rms, peak } = loudness(sound);
    level = levelOf(rms, peak);
    heardAt = now();
    const { phase, goesOn, at } = state.get();
    hearing.add(rms, sound.length / (microphone?.rate ?? 48_000));
    if (phase !== "reading" || !writer) return;
    writer.push(toSamples(sound));
    if (goesOn && hearing.quietFor() >= PAUSE_ENDS && (hearing.span() ?? 0) >= ENOUGH * (lines()[at]?.planned ?? 0)) goOn();
  };
  const leave = async (): Promise<boolean> => {
    stop();
    await Promise.race([Promise.allSettled([...underWay]), new Promise((resolve) => setTimeout(resolve, PATIENCE))]);
    const lost = new Set([...broken, ...ending]).size;
    const isTold = state.get().warnedOf > 0;
    patch({ warnedOf: lost });
    return lost === 0 || isTold;
  };
  /** Stops what is recorded. @returns what became of it, as more of the sentence; "" when nothing was being recorded */
  const breakOff = (): string => {
    const isMidTake = state.get().phase === "reading" && writer !== null;
    const recorded = hearing.seconds();
    level = levelOf(0, 0);
    stop();
    return isMidTake ? ` What was recorded of this line, ${recorded.toFixed(1)} s, is kept.` : "";
  };
  const onGone = (sentence: string): void => {
    microphone = null;
    const kept = breakOff();
    patch({ microphone: { state: "off", name: "" }, message: `${sentence}${kept} Plug it in and ${kept === "" ? "try again" : "read the line again"}, or go on with taps.` });
  };
  const tellMuted = (name: string): void => {
    const kept = breakOff();
    patch({ microphone: { state: "muted", name }, message: `${MUTED}${kept} Turn it on again${kept === "" ? "" : " and read the line again"}, or go on without it.` });
  };
  const onMuted = (muted: boolean): void => {
    const isChange = muted !== isMuted;
    isMuted = muted;
    if (!microphone || !isChange) return;
    if (muted) tellMuted(microphone.name);
    else patch({ microphone: { state: "on", name: microphone.name }, message: "The microphone is heard again." });
  };

  return {
    state,
    moment: () => ({ ...(now() - heardAt > STALE ? levelOf(0, 0) : level), seconds: state.get().phase === "reading" ? (writer ? hearing.seconds() : (now() - begunAt) / 1000) : 0 }),
    load: async () => {
      try {
        const answer = await api["takes:list"]({ file });
        patch(answer.ok ? { takes: answer.takes, folder: answer.folder } : { message: answer.message });
      } catch (error) {
        patch({ message: error instanceof Error ? error.message : String(error) });
      }
    },
    useMicrophone: async () => {
      if (state.get().microphone.state !== "off") return;
      patch({ microphone: { state: "asking", name: "" }, message: null });
      isMuted = false;
      const answer = await openMicrophone({ onSamples, onGone, onMuted });
      if (!answer.ok) return patch({ microphone: { state: "off", name: "" }, message: answer.sentence });
      if (isClosed) return answer.microphone.close();
      microphone = answer.microphone;
      patch({ microphone: { state: "on", name: answer.microphone.name } });
      if (isMuted) tellMuted(answer.microphone.name);
    },
    dropMicrophone: () => {
      stop();
      microphone?.close();
      microphone = null;
      level = levelOf(0, 0);
      patch({ microphone: { state: "off", name: "" } });
    },
    setGoesOn: (goesOn) => patch({ goesOn }),
    start,
    retake: (at) => {
      stop();
      patch({ message: null, isRetake: true });
      begin(at);
    },
    next,
    forward,
    again: () => {
      const { at, phase, isRetake } = state.get();
      if (phase !== "reading" || isBounce()) return;
      end(false);
      patch({ isRetake });
      begin(at);
    },
    stop,
    choose: async (take) => {
      const answer = await api["takes:choose"]({ file, take }).catch((error: unknown) => ({ ok: false as const, code: "", message: String(error) }));
      patch(answer.ok ? { takes: answer.takes } : { message: answer.message });
    },
    sound: async (take) => {
      const answer = await api["takes:sound"]({ file, take }).catch((error: unknown) => ({ ok: false as const, code: "", message: String(error) }));
      if (answer.ok) return answer.base64;
      patch({ message: answer.message });
      return null;
    },
    writeAgain: async () => {
      patch({ message: null, warnedOf: 0 });
      for (const one of [...broken]) await closeTake(one, one.again());
    },
    // A second press while the disk is waited for is no answer to a warning that nobody has seen yet.
    leave: () => {
      leaving ??= leave().finally(() => {
        leaving = null;
      });
      return leaving;
    },
    close: async () => {
      isClosed = true;
      stop();
      microphone?.close();
      microphone = null;
      await Promise.allSettled([...underWay]);
    },
  };
}
