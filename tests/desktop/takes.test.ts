import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { bridge, type Take } from "../../shared/bridge";
import { countingIds, demoEpisode } from "../../shared/episode";
import { DEFAULT_PACE } from "../../shared/speech";
import { nodeDisk, type Disk } from "../../electron/workspace/atomic-write";
import { openWorkspace, type Workspace } from "../../electron/workspace";
import { takeStem } from "../../electron/workspace/takes";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();
const newFolder = countingIds("takes-");
const FILE = "week-7.episode.json";
const RATE = 8000;
const of = { file: FILE, line: "l1", text: "Stand tall.", name: "3 Goblet squat line 1", planned: 1.2 };

let library = "";
let handlers: Workspace["handlers"];
const open = (disk: Disk = nodeDisk): void => {
  handlers = openWorkspace({ library, fonts: join(root, "fonts"), version: "1.2.3", window: "browser", start: null, disk, now: () => new Date("2027-03-04T10:00:00Z") }).handlers;
};
const folder = (): string => join(library, "takes", "week-7");

/** Samples counting up from `from`, so that a piece in the wrong place shows. */
const samples = (from: number, count: number): string => {
  const bytes = Buffer.alloc(count * 2);
  for (let i = 0; i < count; i++) bytes.writeInt16LE(from + i, i * 2);
  return bytes.toString("base64");
};
const good = <T extends { ok: boolean }>(answer: T): Extract<T, { ok: true }> => (answer.ok ? (answer as Extract<T, { ok: true }>) : expect.fail(JSON.stringify(answer)));
const begin = async (fields: Partial<typeof of> = {}): Promise<Take> => good(await handlers["takes:begin"]({ ...of, ...fields, rate: RATE })).take;
const takes = async (): Promise<Take[]> => good(await handlers["takes:list"]({ file: FILE })).takes;

beforeEach(async () => {
  library = join(root, newFolder());
  open();
  good(await handlers["episode:save"]({ file: FILE, episode: demoEpisode, basedOn: null }));
});

describe("a take with sound", () => {
  it("is a plain 16-bit mono WAV file beside the episode, whole after every piece", async () => {
    const take = await begin();
    expect(take.file).toBe("3-goblet-squat-line-1-take-1.wav");
    for (const [after, count] of [[0, 800], [800, 400]] as const) {
      good(await handlers["takes:append"]({ file: FILE, take: take.id, after, samples: samples(after, count) }));
      const bytes = readFileSync(join(folder(), take.file ?? ""));
      expect(bytes.toString("latin1", 0, 4) + bytes.toString("latin1", 8, 16)).toBe("RIFFWAVEfmt ");
      expect(bytes.readUInt32LE(4)).toBe(bytes.length - 8);
      // format PCM, one channel, rate, bytes a second, bytes a sample, bits a sample
      expect([bytes.readUInt16LE(20), bytes.readUInt16LE(22), bytes.readUInt32LE(24), bytes.readUInt32LE(28), bytes.readUInt16LE(32), bytes.readUInt16LE(34)]).toEqual([1, 1, RATE, 2 * RATE, 2, 16]);
      expect(bytes.readUInt32LE(40)).toBe(bytes.length - 44);
      expect(bytes.readInt16LE(44 + 2 * (after + count - 1))).toBe(after + count - 1);
    }
    const ended = good(await handlers["takes:end"]({ file: FILE, take: take.id, seconds: 0.11 })).take;
    expect(ended).toMatchObject({ seconds: 0.11, recorded: 0.15, chosen: true });
    expect(await takes()).toEqual([ended]);
  });

  it("takes a piece that came twice once, and refuses one when a piece before it is missing", async () => {
    const take = await begin();
    const piece = { file: FILE, take: take.id, after: 0, samples: samples(0, 100) };
    good(await handlers["takes:append"](piece));
    expect(await handlers["takes:append"](piece)).toEqual({ ok: true, samples: 100 });
    expect(await handlers["takes:append"]({ ...piece, after: 101 })).toMatchObject({ ok: false, message: "A piece of the recording was not written: a piece before it is missing." });
    expect(await handlers["takes:append"]({ ...piece, samples: "AAAA" })).toMatchObject({ ok: false, code: "bad-samples" });
  });

  it("that was broken off is still there after a new start, as long as its sound", async () => {
    const take = await begin();
    good(await handlers["takes:append"]({ file: FILE, take: take.id, after: 0, samples: samples(0, 4000) }));
    open();
    expect(await takes()).toMatchObject([{ id: take.id, seconds: null, recorded: 0.5 }]);
    expect(good(await handlers["takes:sound"]({ file: FILE, take: take.id })).base64).toBe(readFileSync(join(folder(), take.file ?? "")).toString("base64"));
  });

  it("never replaces another: each gets the next free name, and the newest counts until another is chosen", async () => {
    const [first, second] = [await begin(), await begin()];
    const other = await begin({ line: "l2", name: "3 Goblet squat line 2" });
    expect([first, second, other].map(({ file }) => file)).toEqual(["3-goblet-squat-line-1-take-1.wav", "3-goblet-squat-line-1-take-2.wav", "3-goblet-squat-line-2-take-1.wav"]);
    expect((await takes()).map(({ chosen }) => chosen)).toEqual([false, true, true]);
    expect(good(await handlers["takes:choose"]({ file: FILE, take: first.id })).takes.map(({ chosen }) => chosen)).toEqual([true, false, true]);
    expect(readdirSync(folder()).filter((name) => name.endsWith(".wav"))).toHaveLength(3);
  });

  it("keeps what was written when the disk fills up, and says so", async () => {
    const take = await begin();
    good(await handlers["takes:append"]({ file: FILE, take: take.id, after: 0, samples: samples(0, 80) }));
    open({ ...nodeDisk, rename: () => Promise.reject(Object.assign(new Error("ENOSPC"), { code: "ENOSPC" })) });
    expect(await handlers["takes:end"]({ file: FILE, take: take.id, seconds: 0.01 })).toMatchObject({ ok: false, code: "disk-full", message: "The take was recorded, but its length was not noted: the disk is full. Free some space and try again." });
    open();
    expect(await takes()).toMatchObject([{ id: take.id, seconds: null, recorded: 0.01 }]);
  });
});

describe("a tapped take", () => {
  it("has seconds and no sound", async () => {
    const { take } = good(await handlers["takes:tap"]({ ...of, seconds: 2.5 }));
    expect(take).toMatchObject({ file: null, seconds: 2.5, recorded: null, planned: 1.2, text: "Stand tall." });
    expect(await handlers["takes:sound"]({ file: FILE, take: take.id })).toMatchObject({ ok: false, message: "This take was tapped; it has no sound." });
    expect(await handlers["takes:append"]({ file: FILE, take: take.id, after: 0, samples: "" })).toMatchObject({ ok: false });
  });
});

describe("nothing leaves the library", () => {
  it.each(["../x.episode.json", "a/b.episode.json", ".episode.json", "con.episode.json"])("by the episode's name %s", async (file) => {
    expect(await handlers["takes:tap"]({ ...of, file, seconds: 1 })).toMatchObject({ ok: false, code: "bad-name" });
  });

  it.each(["../../x", "..\\x", "/etc/passwd", "\u0000", "a:b", "   "])("by the take's name %j", async (name) => {
    const take = await begin({ name });
    expect(take.file).toMatch(/^[\p{L}\p{N}-]+-take-1\.wav$/u);
    expect(existsSync(join(folder(), take.file ?? ""))).toBe(true);
  });

  it.each(["takes", "takes/week-7"])("by a link in place of %s", async (where) => {
    const outside = mkdtempSync(join(tmpdir(), "repwright-outside-"));
    if (where !== "takes") mkdirSync(join(library, "takes"));
    symlinkSync(outside, join(library, where));
    expect(await handlers["takes:begin"]({ ...of, rate: RATE })).toMatchObject({ ok: false, code: "outside" });
    expect(readdirSync(outside)).toEqual([]);
  });

  it("by a link in place of a sound file", async () => {
    const take = await begin();
    const outside = join(mkdtempSync(join(tmpdir(), "repwright-outside-")), "x.wav");
    writeFileSync(outside, "mine");
    const path = join(folder(), "3-goblet-squat-line-1-take-2.wav");
    symlinkSync(outside, path);
    const list = JSON.parse(readFileSync(join(folder(), "takes.json"), "utf8")) as { takes: { file: string }[] };
    writeFileSync(join(folder(), "takes.json"), JSON.stringify({ ...list, takes: list.takes.map((one) => ({ ...one, file: "3-goblet-squat-line-1-take-2.wav" })) }));
    expect(await handlers["takes:append"]({ file: FILE, take: take.id, after: 0, samples: samples(0, 10) })).toMatchObject({ ok: false });
    expect(await handlers["takes:sound"]({ file: FILE, take: take.id })).toMatchObject({ ok: false });
    expect(readFileSync(outside, "utf8")).toBe("mine");
  });

  it("by names in the list: one that is no plain name makes the list unreadable", async () => {
    await begin();
    const path = join(folder(), "takes.json");
    const bad = readFileSync(path, "utf8").replace("3-goblet-squat-line-1-take-1.wav", "../../../x.wav");
    writeFileSync(path, bad);
    expect(await handlers["takes:list"]({ file: FILE })).toMatchObject({ ok: false, code: "damaged" });
    expect(await handlers["takes:begin"]({ ...of, rate: RATE })).toMatchObject({ ok: false, code: "damaged" });
    expect(readFileSync(path, "utf8")).toBe(bad);
  });
});

describe("a name for a take's file", () => {
  it.each([["3 Half-kneeling press, line 2", "3-half-kneeling-press-line-2"], ["Żółw öffnet", "żółw-öffnet"], ["", "line"], ["?!", "line"], ["x".repeat(300), "x".repeat(90)]])("from %j is %j", (name, stem) => {
    expect(takeStem(name)).toBe(stem);
  });
});

describe("the speaker's pace", () => {
  const voice = { pace: { ...DEFAULT_PACE, syllablesPerSecond: 4.2 }, lines: 12, seconds: 64, at: "2027-03-04T10:00:00.000Z" };

  it("is kept in the library and none at first", async () => {
    expect(await handlers["voice:read"]({})).toEqual({ ok: true, voice: null });
    good(await handlers["voice:keep"]({ voice }));
    open();
    expect(await handlers["voice:read"]({})).toEqual({ ok: true, voice });
    expect(bridge["voice:read"].answer.safeParse({ ok: true, voice }).success).toBe(true);
  });

  it("in a file that cannot be read is left alone and said", async () => {
    writeFileSync(join(library, "voice.json"), "{");
    expect(await handlers["voice:read"]({})).toMatchObject({ ok: false, code: "damaged" });
    expect(readFileSync(join(library, "voice.json"), "utf8")).toBe("{");
  });

  it("says what was not written, the own pace or the usual one", async () => {
    mkdirSync(join(library, "voice.json"));
    expect(await handlers["voice:keep"]({ voice })).toEqual({ ok: false, code: "not-a-file", message: "Your pace was not kept: there is a folder of this name." });
    expect(await handlers["voice:keep"]({ voice: null })).toEqual({ ok: false, code: "not-a-file", message: "The usual pace was not noted: there is a folder of this name." });
  });
});
