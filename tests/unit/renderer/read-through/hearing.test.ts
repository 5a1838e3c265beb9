import { describe, expect, it } from "vitest";
import { createHearing, levelOf } from "../../../../renderer/read-through/hearing";
import { base64Of, joined, loudness, toSamples } from "../../../../renderer/read-through/samples";

/** Pieces of a fiftieth of a second: how loud, for how long. */
function hear(hearing: ReturnType<typeof createHearing>, ...parts: readonly (readonly [rms: number, seconds: number])[]): void {
  for (const [rms, seconds] of parts) for (let i = 0; i < Math.round(seconds * 50); i++) hearing.add(rms, 0.02);
}

describe("hearing", () => {
  it("measures from the first sound to the last", () => {
    const hearing = createHearing();
    hear(hearing, [0.0005, 1.2], [0.1, 2], [0.0005, 0.5], [0.1, 1], [0.0005, 3]);
    expect(hearing.span()).toBeCloseTo(3.5);
    expect(hearing.quietFor()).toBeCloseTo(3);
    expect(hearing.seconds()).toBeCloseTo(7.7);
  });

  it("takes a click for no voice", () => {
    const hearing = createHearing();
    hear(hearing, [0.0005, 1], [0.4, 0.06], [0.0005, 1]);
    expect(hearing.span()).toBeNull();
    expect(hearing.quietFor()).toBe(0);
  });

  it("tells a voice from a humming room", () => {
    const hearing = createHearing();
    hear(hearing, [0.009, 4]);
    hearing.begin();
    hear(hearing, [0.009, 2], [0.12, 2], [0.009, 3]);
    expect(hearing.span()).toBeCloseTo(2, 0);
    expect(hearing.quietFor()).toBeGreaterThan(2.5);
  });

  it("forgets the last line but not the room", () => {
    const hearing = createHearing();
    hear(hearing, [0.009, 8], [0.12, 2]);
    hearing.begin();
    expect([hearing.span(), hearing.seconds()]).toEqual([null, 0]);
    hear(hearing, [0.009, 1], [0.12, 1.5], [0.009, 1]);
    expect(hearing.span()).toBeCloseTo(1.5);
  });
});

describe("the level", () => {
  it("is a share of a meter and a word", () => {
    expect(levelOf(0, 0)).toEqual({ share: 0, word: "silent" });
    expect(levelOf(0.01, 0.03)).toMatchObject({ word: "quiet" });
    expect(levelOf(0.1, 0.4)).toMatchObject({ word: "good", share: expect.closeTo(40 / 60) as number });
    expect(levelOf(0.3, 1)).toMatchObject({ word: "too loud" });
  });
});

describe("samples", () => {
  it("are 16-bit, cut off at the edges", () => {
    expect([...toSamples(Float32Array.of(0, 1, -1, 2, -2, 0.5))]).toEqual([0, 32767, -32767, 32767, -32768, 16384]);
  });

  it("go lowest byte first", () => {
    expect([...Buffer.from(base64Of(Int16Array.of(1, -2, 258)), "base64")]).toEqual([1, 0, 254, 255, 2, 1]);
    const long = Int16Array.from({ length: 50_000 }, (_, i) => (i * 7) % 30_000);
    const bytes = Buffer.from(base64Of(long), "base64");
    expect(bytes.length).toBe(100_000);
    expect(bytes.readInt16LE(99_998)).toBe(long.at(-1));
  });

  it("are put one behind the other, and their loudness is known", () => {
    expect([...joined([Int16Array.of(1, 2), Int16Array.of(), Int16Array.of(3)])]).toEqual([1, 2, 3]);
    expect(loudness(Float32Array.of(0.6, -0.8))).toEqual({ rms: expect.closeTo(Math.sqrt(0.5)) as number, peak: expect.closeTo(0.8) as number });
    expect(loudness(new Float32Array(0))).toEqual({ rms: 0, peak: 0 });
  });
});
