import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hearWav, heardSpeech } from "../../../../shared/speech";
import { buzz, chunk, fileOf, formatChunk, PLAIN, riff, sampleBytes, wav, type WavKind } from "./wav";

const PARTS = [{ seconds: 0.5, loud: 0 }, { seconds: 1.2, loud: 0.3 }, { seconds: 0.5, loud: 0 }, { seconds: 0.8, loud: 0.2 }, { seconds: 0.4, loud: 0 }];
const SECONDS = 3.4;

describe("a WAV file", () => {
  it("is heard alike in every kind of plain samples, in any channels, at any rate", async () => {
    const kinds = fc.record({
      as: fc.constantFrom(["integer", 8], ["integer", 16], ["integer", 24], ["integer", 32], ["float", 32], ["float", 64]) as fc.Arbitrary<["integer" | "float", number]>,
      channels: fc.integer({ min: 1, max: 3 }),
      rate: fc.constantFrom(8000, 11_025, 16_000, 22_050, 44_100, 48_000, 96_000),
      isExtensible: fc.boolean(),
    });
    await fc.assert(fc.asyncProperty(kinds, async ({ as: [kind, bits], channels, rate, isExtensible }) => {
      // 8 bits are too coarse for a room's noise; there it is silence and a hiss.
      const samples = buzz(PARTS, rate, bits === 8 ? 0.004 : 0.001);
      const result = await hearWav(fileOf(wav(samples, { kind, bits, channels, rate, isExtensible })));
      if (!result.ok) return expect.fail(result.message);
      expect(result.seconds).toBeCloseTo(SECONDS, 3);
      expect(result.heard.from).toBeCloseTo(0.5, 1);
      expect(result.heard.to).toBeCloseTo(3, 1);
      expect(result.heard.voicedSeconds).toBeCloseTo(2, 1);
      expect(result.heard.pauses).toHaveLength(1);
    }), { numRuns: 40 });
  });

  it("is heard as its samples are, in pieces of a megabyte, with the share that was heard", async () => {
    const kind: WavKind = { kind: "float", bits: 64, channels: 2, rate: 22_050 };
    const samples = buzz([...PARTS, ...PARTS, ...PARTS], kind.rate);
    const file = fileOf(wav(samples, kind));
    const shares: number[] = [];
    const result = await hearWav(file, (share) => shares.push(share));
    expect(result).toEqual({ ok: true, seconds: samples.length / kind.rate, heard: heardSpeech(samples, kind.rate) });
    expect(file.size).toBeGreaterThan(3 * 2 ** 20);
    expect(file.asked()).toBeLessThanOrEqual(2 ** 20);
    expect(shares).toHaveLength(Math.ceil(file.size / 2 ** 20));
    expect(shares.at(-1)).toBe(1);
  });

  it("may hold other things before and after its samples", async () => {
    const data = chunk("data", sampleBytes(buzz(PARTS), PLAIN));
    const result = await hearWav(fileOf(riff(chunk("JUNK", Buffer.alloc(7)), formatChunk(PLAIN), chunk("LIST", Buffer.from("odd")), data, chunk("id3 ", Buffer.alloc(200, 255)))));
    expect(result).toMatchObject({ ok: true, seconds: SECONDS });
  });

  it.each([0, 0x7fff_f000, 0xffff_ffff])("written to a pipe, with %d for its length, runs to the file's end", async (said) => {
    const bytes = Buffer.concat([riff(formatChunk(PLAIN)), chunk("data", sampleBytes(buzz(PARTS), PLAIN), said)]);
    expect(await hearWav(fileOf(bytes))).toMatchObject({ ok: true, seconds: SECONDS });
  });

  it("of 100 MB is heard a piece at a time", async () => {
    const rate = 48_000;
    const kind: WavKind = { kind: "integer", bits: 32, channels: 2, rate };
    const bytes = 100 * 2 ** 20;
    const head = Buffer.concat([riff(formatChunk(kind)), chunk("data", Buffer.alloc(0), bytes)]);
    const second = sampleBytes(buzz([{ seconds: 0.6, loud: 0.3 }, { seconds: 0.4, loud: 0 }], rate), kind);
    let most = 0;
    const read = (at: number, length: number): Promise<Uint8Array> => {
      most = Math.max(most, length);
      if (at < head.length) return Promise.resolve(head.subarray(at, at + length));
      const [turned, piece] = [(at - head.length) % second.length, Buffer.alloc(length)];
      for (let done = -turned; done < length; done += second.length) second.copy(piece, Math.max(0, done), Math.max(0, -done));
      return Promise.resolve(piece);
    };
    const result = await hearWav({ size: head.length + bytes, read });
    if (!result.ok) return expect.fail(result.message);
    expect(result.seconds).toBeCloseTo(273.07, 2);
    expect(result.heard.voicedSeconds / result.seconds).toBeCloseTo(0.6, 1);
    expect(result.heard.pauses.length).toBeGreaterThan(270);
    expect(most).toBeLessThanOrEqual(2 ** 20);
  });
});

describe("what is no recording to measure", () => {
  const whole = wav(buzz(PARTS));
  const compressed = (codec: number, isExtensible = false): Buffer => riff(formatChunk({ ...PLAIN, isExtensible }, codec), chunk("data", Buffer.alloc(4000, 7)));
  const formatOf = (kind: Partial<WavKind>): Buffer => riff(formatChunk({ ...PLAIN, ...kind }), chunk("data", Buffer.alloc(4000)));
  const badBlock = formatOf({});
  badBlock.writeUInt16LE(3, 32);
  it.each([
    ["an empty file", Buffer.alloc(0), "empty", "The file is empty."],
    ["a WAV file without samples", wav([]), "empty", "The WAV file holds no sound."],
    ["text", Buffer.from("read me aloud, please"), "not-wav", "This is no WAV file. Save the recording as WAV, with plain PCM samples."],
    ["a few letters", Buffer.from("RIFF"), "not-wav", "This is no WAV file. Save the recording as WAV, with plain PCM samples."],
    ["another kind of RIFF", Buffer.concat([Buffer.from("RIFF\u0004\0\0\0AVI ", "latin1"), Buffer.alloc(40)]), "not-wav", "This is no WAV file. Save the recording as WAV, with plain PCM samples."],
    ["a WAV of compressed sound", compressed(85), "compressed", "The WAV file is compressed, with codec number 85; only plain samples can be measured. Save the recording as WAV with PCM samples."],
    ["compressed sound named the longer way", compressed(353, true), "compressed", "The WAV file is compressed, with codec number 353; only plain samples can be measured. Save the recording as WAV with PCM samples."],
    ["A-law", compressed(6), "compressed", "The WAV file is compressed, with codec number 6; only plain samples can be measured. Save the recording as WAV with PCM samples."],
    ["a file cut in its samples", whole.subarray(0, 44 + 32_000), "cut-short", "The WAV file is cut short: it should hold 3.4 s of sound, and 1.0 s are there. Copy it again, or save it anew."],
    ["a file cut in its head", whole.subarray(0, 30), "cut-short", "The WAV file is cut short: it ends before its sound begins. Copy it again, or save it anew."],
    ["samples before their format", riff(chunk("data", Buffer.alloc(200)), formatChunk(PLAIN)), "damaged", "The WAV file is damaged: its samples come before it says how they are written."],
    ["no channels", formatOf({ channels: 0 }), "damaged", "The WAV file is damaged: it says it has no channels, or no samples a second."],
    ["a short format", riff(chunk("fmt ", Buffer.alloc(8)), chunk("data", Buffer.alloc(200))), "damaged", "The WAV file is damaged: it does not say how its samples are written."],
    ["samples of 48 bits", formatOf({ bits: 48 }), "damaged", "The WAV file is damaged: 48 bits a sample are not known for PCM samples."],
    ["halves of floats", formatOf({ kind: "float", bits: 16 }), "damaged", "The WAV file is damaged: 16 bits a sample are not known for floating-point samples."],
    ["sizes that do not agree", badBlock, "damaged", "The WAV file is damaged: 1 × 16 bits do not take 3 bytes."],
    ["more than 4 GB", Buffer.from("RF64\xff\xff\xff\xffWAVE", "latin1"), "too-long", "The WAV file is one of more than 4 GB (RF64). Save the part with your voice as a WAV file of its own."],
    ["silence", wav(new Float32Array(32_000)), "no-voice", "No voice is heard in the recording, 2.0 s of it. Is it the right file, and was the microphone on?"],
    ["a room alone", wav(buzz([{ seconds: 2, loud: 0 }])), "no-voice", "No voice is heard in the recording, 2.0 s of it. Is it the right file, and was the microphone on?"],
  ])("%s is refused in a sentence", async (_what, bytes, code, message) => {
    expect(await hearWav(fileOf(bytes))).toEqual({ ok: false, code, message });
  });

  it("of more than two hours is refused before a sample is read", async () => {
    const head = Buffer.concat([riff(formatChunk({ ...PLAIN, rate: 8000 })), chunk("data", Buffer.alloc(0), 144_000_000)]);
    const file = fileOf(head);
    const message = "The recording is 2.5 hours long; at most 2 hours are measured. Save the part with your voice as a WAV file of its own.";
    expect(await hearWav({ ...file, size: head.length + 144_000_000 })).toEqual({ ok: false, code: "too-long", message });
    expect(file.asked()).toBeLessThan(100);
  });

  it("that gets shorter while it is read is refused", async () => {
    const file = fileOf(whole.subarray(0, 5000));
    expect(await hearWav({ ...file, size: whole.length })).toMatchObject({ ok: false, code: "cut-short" });
  });

  it("is refused or heard whatever its bytes, and never thrown at", async () => {
    const head = [...whole.subarray(0, 44)];
    await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.nat({ max: 43 }), fc.nat({ max: 255 })), { maxLength: 6 }), fc.nat({ max: 3000 }), async (changes, length) => {
      const bytes = Buffer.concat([Buffer.from(head), whole.subarray(44, 44 + length)]);
      for (const [at, value] of changes) bytes[at] = value;
      const result = await hearWav(fileOf(bytes));
      if (result.ok) expect(result.heard.voicedSeconds).toBeGreaterThan(0);
      else expect(result.message).toMatch(/^.{10,200}\.$|\?$/);
    }), { numRuns: 300 });
  });
});
