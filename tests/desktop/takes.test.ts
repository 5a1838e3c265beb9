import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, sep } from "node:path";
import fc from "fast-check";
import { beforeEach, describe, expect, it } from "vitest";
import { bridge, takeFileName, type Take } from "../../shared/bridge";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine } from "../../shared/episode";
import { DEFAULT_PACE } from "../../shared/speech";
import { nodeDisk, type Disk } from "../../electron/workspace/atomic-write";
import { openWorkspace, type Workspace } from "../../electron/workspace";
import { linesToRead, takeName } from "../../renderer/read-through/lines";
import { takeStem } from "../../electron/workspace/takes/take-name";
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

  const end = async ({ id }: Take, seconds: number | null): Promise<Take> => good(await handlers["takes:end"]({ file: FILE, take: id, seconds })).take;
  const counted = async (): Promise<(readonly [number | null, boolean])[]> => (await takes()).map(({ seconds, chosen }) => [seconds, chosen]);

  it.each([["broken off", null], ["power cut", "no end"], ["too short to hear", 0]] as const)("does not take the place of a measured one by being %s", async (_how, ending) => {
    await end(await begin(), 1.2);
    const again = await begin();
    expect(await counted()).toEqual([[1.2, true], [null, false]]);
    if (ending !== "no end") expect(await end(again, ending)).toMatchObject({ seconds: ending, chosen: false });
    expect((await counted()).map(([, chosen]) => chosen)).toEqual([true, false]);
  });

  it("does not take the place of a tapped one either, and takes it when it is read to its end", async () => {
    good(await handlers["takes:tap"]({ ...of, seconds: 2 }));
    const again = await begin();
    expect(await counted()).toEqual([[2, true], [null, false]]);
    expect(await end(again, 1.4)).toMatchObject({ chosen: true });
    expect(await counted()).toEqual([[2, false], [1.4, true]]);
  });

  it("whose end could only be noted later leaves a newer one in its place", async () => {
    await end(await begin(), 1);
    const late = await begin();
    await end(await begin(), 3);
    expect(await end(late, 2)).toMatchObject({ chosen: false });
    expect(await counted()).toEqual([[1, false], [2, false], [3, true]]);
  });

  it("that counts and was measured goes on counting, or a newer measured one does, whatever comes after", async () => {
    await fc.assert(fc.asyncProperty(fc.array(fc.oneof(fc.record({ end: fc.constantFrom(null, 0, 1, 2.5) }), fc.constant("power cut" as const), fc.record({ tap: fc.constantFrom(1, 2) })), { maxLength: 7 }), async (steps) => {
      const line = newFolder().slice(-20);
      let best: string | null = null;
      for (const step of steps) {
        if (step === "power cut") await begin({ line });
        else if ("tap" in step) best = good(await handlers["takes:tap"]({ ...of, line, seconds: step.tap })).take.id;
        else {
          const { id } = await end(await begin({ line }), step.end);
          if (step.end) best = id;
        }
      }
      const chosen = (await takes()).filter((take) => take.line === line && take.chosen);
      expect(chosen).toHaveLength(steps.length > 0 ? 1 : 0);
      if (best !== null) expect(chosen[0]?.id).toBe(best);
    }), { numRuns: 25 });
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

describe("an episode saved as a new file", () => {
  const NEW = "week-7-2.episode.json";
  const newTakes = (): string => join(library, "takes", "week-7-2");
  const wavs = (folder: string): string[] => readdirSync(folder).filter((name) => name.endsWith(".wav")).sort();
  const saveAs = async (file: string) => good(await handlers["episode:save"]({ file, episode: demoEpisode, basedOn: null }));
  const listOf = async (file: string): Promise<Take[]> => good(await handlers["takes:list"]({ file })).takes;
  /** A recorded take, one of another line, and a tapped one. */
  const read = async (): Promise<Take[]> => {
    for (const [line, seconds] of [["l1", 0.1], ["l1", null], ["l2", 0.1]] as const) {
      const { id } = await begin({ line, name: `3 Goblet squat line ${line.slice(1)}` });
      good(await handlers["takes:append"]({ file: FILE, take: id, after: 0, samples: samples(seconds === null ? 7 : 1, 800) }));
      good(await handlers["takes:end"]({ file: FILE, take: id, seconds }));
    }
    good(await handlers["takes:tap"]({ ...of, line: "l3", seconds: 2 }));
    return takes();
  };

  it("has its takes with their sound, and the old file keeps its own", async () => {
    const before = await read();
    await saveAs(NEW);
    expect(await listOf(NEW)).toEqual(before);
    expect(await takes()).toEqual(before);
    expect(wavs(newTakes())).toEqual(wavs(folder()));
    for (const name of wavs(folder())) expect(readFileSync(join(newTakes(), name)).equals(readFileSync(join(folder(), name)))).toBe(true);
    // From here on they are two.
    good(await handlers["takes:tap"]({ ...of, file: NEW, seconds: 3 }));
    expect(await takes()).toEqual(before);
  });

  it("brings none where none were noted, and none when it is only saved again or is another episode", async () => {
    await saveAs(NEW);
    expect(existsSync(newTakes())).toBe(false);
    await read();
    await saveAs(FILE);
    good(await handlers["episode:save"]({ file: "other.episode.json", episode: { ...demoEpisode, id: "other" }, basedOn: null }));
    expect(readdirSync(join(library, "takes"))).toEqual(["week-7"]);
  });

  it("replaces nothing that lies there already, and copies no take twice", async () => {
    const before = await read();
    mkdirSync(newTakes());
    writeFileSync(join(newTakes(), "3-goblet-squat-line-1-take-1.wav"), "somebody's own");
    await saveAs(NEW);
    const after = await listOf(NEW);
    expect(after.map(({ id, seconds, chosen }) => [id, seconds, chosen])).toEqual(before.map(({ id, seconds, chosen }) => [id, seconds, chosen]));
    expect(after.map(({ file }) => file)).toEqual(["3-goblet-squat-line-1-take-2.wav", "3-goblet-squat-line-1-take-3.wav", "3-goblet-squat-line-2-take-1.wav", null]);
    expect(readFileSync(join(newTakes(), "3-goblet-squat-line-1-take-1.wav"), "utf8")).toBe("somebody's own");
    expect(good(await handlers["takes:sound"]({ file: NEW, take: before[0]?.id ?? "" })).base64).toBe(good(await handlers["takes:sound"]({ file: FILE, take: before[0]?.id ?? "" })).base64);
    // Back and forth between two names.
    for (const file of [FILE, NEW]) await saveAs(file);
    expect(await listOf(NEW)).toEqual(after);
    expect(await takes()).toEqual(before);
  });

  it.each([["its sound", "copyFile"], ["its list", "rename"]] as const)("without room for %s is saved all the same; the takes are told to be missing, nothing half is left, and they follow when there is room", async (_what, operation) => {
    const before = await read();
    let isFull = true;
    let calls = 0;
    const refuse = (path: string): boolean => isFull && path.includes(`takes${sep}`) && (operation === "rename" || ++calls > 1);
    const full = Object.assign(new Error("ENOSPC"), { code: "ENOSPC" });
    open({
      ...nodeDisk,
      copyFile: (from, to, mode) => (operation === "copyFile" && refuse(String(to)) ? Promise.reject(full) : nodeDisk.copyFile(from, to, mode)),
      rename: (from, to) => (operation === "rename" && refuse(String(to)) ? Promise.reject(full) : nodeDisk.rename(from, to)),
    });
    good(await handlers["episode:open"]({ file: FILE }));
    await saveAs(NEW);
    calls = 0;
    expect(await handlers["takes:list"]({ file: NEW })).toEqual({
      ok: false, code: "disk-full",
      message: `The takes of "${FILE}" were not copied to "${NEW}" and are still in ${folder()}: the disk is full. Free some space and try again.`,
    });
    expect(readdirSync(newTakes())).toEqual([]);
    isFull = false;
    expect(await listOf(NEW)).toEqual(before);
    expect(wavs(newTakes())).toEqual(wavs(folder()));
  });

  it("from a list that cannot be read says so and leaves it", async () => {
    await read();
    writeFileSync(join(folder(), "takes.json"), "{");
    await saveAs(NEW);
    expect(await handlers["takes:list"]({ file: NEW })).toMatchObject({ ok: false, code: "damaged", message: expect.stringMatching(/^The takes of "week-7\.episode\.json" were not copied .+ cannot be read and is left as it is/) as string });
    expect(readFileSync(join(folder(), "takes.json"), "utf8")).toBe("{");
  });

  it("brings no sound through a link, only what was measured", async () => {
    const [first] = await read();
    const outside = join(mkdtempSync(join(tmpdir(), "repwright-outside-")), "x.wav");
    writeFileSync(outside, "mine");
    rmSync(join(folder(), first?.file ?? ""));
    symlinkSync(outside, join(folder(), first?.file ?? ""));
    await saveAs(NEW);
    expect((await listOf(NEW))[0]).toMatchObject({ id: first?.id, seconds: 0.1 });
    expect(wavs(newTakes())).toEqual(["3-goblet-squat-line-1-take-2.wav", "3-goblet-squat-line-2-take-1.wav"]);
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

  it("keeps the line's number and whole characters however long the block's name is, in fewer bytes than any disk takes", () => {
    fc.assert(fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), fc.integer({ min: 1, max: 300 }), (title, number) => {
      const stem = takeStem(`3 ${title} line ${number}`);
      expect(stem.endsWith(`-line-${number}`)).toBe(true);
      expect(Buffer.byteLength(stem)).toBeLessThanOrEqual(90);
      expect(Buffer.from(stem).toString()).toBe(stem);
      expect(takeFileName.safeParse(`${stem}-take-1000.wav`).success).toBe(true);
    }));
  });

  it("of the longest title there can be, in letters of three bytes, is one this disk takes, with sound and tapped", async () => {
    const longest = emptyBlock(newFolder, "exercise", { title: "深".repeat(200), lines: [newLine(newFolder, "say", "Sit."), newLine(newFolder, "say", "Stand.")] });
    const [, second] = linesToRead(emptyEpisode(newFolder, { blocks: [longest] }), DEFAULT_PACE);
    const name = takeName(second ?? expect.fail());
    const request = bridge["takes:begin"].request.parse({ ...of, name, rate: RATE });
    expect(good(await handlers["takes:begin"](request)).take.file).toBe(`1-${"深".repeat(27)}-line-2-take-1.wav`);
    expect(bridge["takes:tap"].request.safeParse({ ...of, name, seconds: 1 }).success).toBe(true);
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
