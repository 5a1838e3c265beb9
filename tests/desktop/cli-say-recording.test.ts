import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { run } from "../../electron/cli/program";
import { countingIds, emptyBlock, emptyEpisode, newLine, writeEpisode } from "../../shared/episode";
import { DEFAULT_PACE, readAloud, saidWords, slowedPace, type Pace } from "../../shared/speech";
import { buzz, chunk, formatChunk, PLAIN, riff, sampleBytes, wav, type WavKind } from "../unit/speech/recording/wav";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();

async function repwright(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let [out, err] = ["", ""];
  const code = await run(args, {
    stdin: Readable.from([]), out: async (text) => void (out += text), err: (text) => void (err += text),
    now: () => new Date("2027-03-04T10:00:00Z"), dist: root, ended: async () => undefined,
  });
  return { code, out, err };
}

const LINES = [
  "Sit back between your heels, and keep the whole foot on the floor.",
  "Then stand up again. Breathe out on the way.",
  "Three sets of ten with 20 kg, and rest for 90 s between them.",
];
const SLOW = slowedPace(DEFAULT_PACE, 1.25);

/** Lines read at a pace, as a buzz with silences in it: three seconds before the first line, `wait` before each other one. */
function reading(lines: readonly string[], pace: Pace, wait: number, rate = PLAIN.rate): Float32Array {
  const parts = lines.flatMap((text) => {
    const words = saidWords(text, pace);
    return words.flatMap(({ seconds, pauseSeconds }, at) => [{ seconds, loud: 0.3 }, { seconds: at === words.length - 1 ? wait : pauseSeconds, loud: 0 }]);
  });
  return buzz([{ seconds: 3, loud: 0 }, ...parts], rate);
}

function write(name: string, content: string | Buffer): string {
  const path = join(root, name);
  writeFileSync(path, content);
  return path;
}

const text = write("words.txt", `${LINES.join("\r\n")}\r\n\r\n`);
const sound = write("me.wav", wav(reading(LINES, SLOW, 4)));
const newId = countingIds("say-");
const episode = write("talk.episode.json", writeEpisode(emptyEpisode(newId, {
  title: "Talk",
  blocks: LINES.map((line) => emptyBlock(newId, "talk", { title: "Talk", lines: [newLine(newId, "say", line), newLine(newId, "note", "Not read.")] })),
})));

interface Answer {
  readonly recordingSeconds: number;
  readonly speechSeconds: number;
  readonly silentSeconds: number;
  readonly plannedSeconds: number;
  readonly words: number;
  readonly pace: Pace;
}

describe("repwright say --recording", () => {
  it.each([["an episode's lines", episode], ["a text", text]])("learns the pace of %s from silence and sound", async (_what, words) => {
    const { code, out, err } = await repwright("say", words, "--recording", sound, "--json");
    expect([code, err]).toEqual([0, ""]);
    const answer = JSON.parse(out) as Answer;
    const [planned, spoken] = [readAloud(LINES), readAloud(LINES, SLOW).seconds];
    expect(answer).toMatchObject({ plannedSeconds: planned.seconds, words: planned.words });
    expect(Math.abs(answer.speechSeconds / spoken - 1)).toBeLessThan(0.02);
    expect(Math.abs(answer.pace.syllablesPerSecond / SLOW.syllablesPerSecond - 1)).toBeLessThan(0.02);
    expect(answer.speechSeconds + answer.silentSeconds).toBeCloseTo(answer.recordingSeconds, 6);
  });

  it.each<WavKind>([
    { kind: "integer", bits: 8, channels: 1, rate: 8000 },
    { kind: "integer", bits: 24, channels: 2, rate: 44_100, isExtensible: true },
    { kind: "integer", bits: 32, channels: 1, rate: 22_050 },
    { kind: "float", bits: 32, channels: 2, rate: 48_000 },
  ])("takes samples of $bits bits ($kind), channels: $channels, rate: $rate", async (kind) => {
    const file = write("kind.wav", wav(reading(LINES, SLOW, 1.5, kind.rate), kind));
    const answer = JSON.parse((await repwright("say", text, "--recording", file, "--json")).out) as Answer;
    expect(Math.abs(answer.pace.syllablesPerSecond / SLOW.syllablesPerSecond - 1)).toBeLessThan(0.03);
  });

  it("tells people what was heard, planned and measured, and the pace", async () => {
    const { code, out } = await repwright("say", text, "--recording", sound);
    expect(code).toBe(0);
    expect(out).toMatch(/^Heard: \d+\.\d s of speech in 0:3\d of sound; \d+\.\d s of silence left out\.\nPlanned: \d+\.\d s for \d+ words\. Measured: \d+\.\d s, \d\.\d s longer \(2[345] %\)\.\nPace learned: 2\.8\d syllables a second; 0\.3\d s of silence at a comma, 0\.7\d s at a sentence's end, 0\.[45]\d s at a breath\.\nPlanned at the usual pace\.\n$/);
  });

  it("plans an episode at the pace that is kept in its folder", async () => {
    const folder = join(root, "library");
    mkdirSync(folder);
    const own = join("library", "talk.episode.json");
    write(own, writeEpisode(emptyEpisode(newId, { blocks: [emptyBlock(newId, "talk", { lines: LINES.map((line) => newLine(newId, "say", line)) })] })));
    write(join("library", "voice.json"), JSON.stringify({ format: "repwright-voice", version: 1, voice: { pace: SLOW, lines: 3, seconds: 12, at: "2027-03-01T10:00:00Z" } }));
    const { out } = await repwright("say", join(root, own), "--recording", sound);
    expect(out).toContain(`Planned: ${readAloud(LINES, SLOW).seconds.toFixed(1)} s`);
    expect(out).toContain("Counted at your own pace, 2.9 syllables a second, measured on 3 lines.");
  });

  it.each<[string, Buffer, string]>([
    ["nothing in it", Buffer.alloc(0), "The file is empty."],
    ["no WAV", Buffer.from("hello ".repeat(40)), "This is no WAV file. Save the recording as WAV, with plain PCM samples."],
    ["compressed sound", riff(formatChunk(PLAIN, 17), chunk("data", Buffer.alloc(4000))), "The WAV file is compressed, with codec number 17; only plain samples can be measured. Save the recording as WAV with PCM samples."],
    ["half of its sound", wav(reading(LINES, SLOW, 1)).subarray(0, 200_000), "The WAV file is cut short: it should hold"],
    ["no voice", wav(new Float32Array(48_000)), "No voice is heard in the recording, 3.0 s of it."],
    ["one line of three", wav(reading(LINES.slice(0, 1), DEFAULT_PACE, 1)), "too little for a pace. Read every line, and hand over the whole recording."],
    ["every line twice", wav(reading([...LINES, ...LINES], DEFAULT_PACE, 1)), "too much for these words. Cut out what else was said, and what was said twice."],
  ])("takes nothing from a recording with %s, and says why", async (what, bytes, sentence) => {
    const file = write("bad.wav", bytes);
    const { code, out, err } = await repwright("say", text, "--recording", file);
    expect([what, code, out]).toEqual([what, 2, ""]);
    expect(err).toContain(`"${file}" was not measured. `);
    expect(err).toContain(sentence);
  });

  it("measures a recording of more than 50 MB", async () => {
    const kind: WavKind = { kind: "float", bits: 64, channels: 2, rate: 48_000 };
    const lead = Buffer.alloc(40 * kind.rate * 16);
    const data = Buffer.concat([lead, sampleBytes(reading(LINES, SLOW, 1, kind.rate), kind), lead]);
    expect(data.length).toBeGreaterThan(50 * 2 ** 20);
    const answer = JSON.parse((await repwright("say", text, "--recording", write("long.wav", riff(formatChunk(kind), chunk("data", data))), "--json")).out) as Answer;
    expect(Math.abs(answer.pace.syllablesPerSecond / SLOW.syllablesPerSecond - 1)).toBeLessThan(0.03);
  });

  it.each<[string, readonly string[], string]>([
    ["no words are named", ["--recording", sound], "say --recording needs the words that were read: an episode or a text file."],
    ["no recording is named", [text], "say takes words by name, and --json, only with --recording FILE; without it, it reads records from standard input."],
    ["JSON is asked for without a recording", ["--json"], "say takes words by name, and --json, only with --recording FILE; without it, it reads records from standard input."],
    ["there is no such recording", [text, "--recording", join(root, "none.wav")], "could not be read: there is no such file or folder."],
    ["there are no such words", [join(root, "missing.txt"), "--recording", sound], "could not be read: there is no such file or folder."],
    ["the recording is a folder", [text, "--recording", root], "is not an ordinary file."],
    ["the words are sound", [write("tiny.wav", wav(new Float32Array(100))), "--recording", sound], "it is no text."],
    ["the words are the length of a library", [write("long.txt", "word ".repeat(250_000)), "--recording", sound], "a text of more than 1 MB is not what was read aloud."],
    ["the words are none", [write("none.txt", " \n\n"), "--recording", sound], "There are no words the recording could be a reading of."],
  ])("ends with 2 and a sentence when %s", async (_when, args, sentence) => {
    const { code, out, err } = await repwright("say", ...args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain(sentence);
  });
});
