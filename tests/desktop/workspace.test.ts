import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, symlinkSync, truncateSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { applyEdits, countingIds, demoEpisode, emptyEpisode, writeEpisode, type Episode } from "../../shared/episode";
import { nodeDisk, type Disk } from "../../electron/workspace/atomic-write";
import { openWorkspace, type BridgeMessage, type Workspace } from "../../electron/workspace";
import { stampOf } from "../../electron/workspace/stamp";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();
const newFolder = countingIds("library-");
const FILE = "week-7.episode.json";
const fonts = join(process.cwd(), "dist", "fonts");

let library = "";
let workspace: Workspace;
let heard: BridgeMessage[] = [];

/** Opens the library, as a start of the app does. */
function open(disk: Disk = nodeDisk): Workspace {
  workspace = openWorkspace({ library, fonts, version: "1.2.3", window: "browser", start: null, disk });
  workspace.listen((message) => heard.push(message));
  return workspace;
}

const inLibrary = (...names: string[]): string => join(library, ...names);
const titled = (title: string): Episode => applyEdits(demoEpisode, [{ type: "set-title", title }]);
const save = (episode: Episode, basedOn: string | null, file = FILE) => workspace.handlers["episode:save"]({ file, episode, basedOn });
const read = (file = FILE) => workspace.handlers["episode:open"]({ file });

/** Saves and gives the stamp. */
async function saved(episode: Episode, basedOn: string | null): Promise<string> {
  const answer = await save(episode, basedOn);
  return answer.ok ? answer.stamp : expect.fail(answer.message);
}

/** A disk on which one operation fails like the real one does. */
function failing(operation: keyof Disk, code: string): Disk {
  const fail = () => Promise.reject(Object.assign(new Error(code), { code }));
  return { ...nodeDisk, [operation]: fail };
}

beforeEach(() => {
  library = join(root, newFolder());
  heard = [];
  open();
});
afterEach(() => workspace.close());

describe("saving", () => {
  it("makes the library and writes the file as the core writes it", async () => {
    const stamp = await saved(demoEpisode, null);
    const bytes = readFileSync(inLibrary(FILE));
    expect(bytes.toString("utf8")).toBe(writeEpisode(demoEpisode));
    expect(stamp).toBe(stampOf(bytes));
  });

  it("leaves nothing but the file and its history behind", async () => {
    await saved(titled("second"), await saved(titled("first"), null));
    expect(readdirSync(library).sort()).toEqual([".history", FILE]);
  });

  it("never overwrites what another program wrote", async () => {
    const stamp = await saved(demoEpisode, null);
    writeFileSync(inLibrary(FILE), writeEpisode(titled("theirs")));
    expect(await save(titled("mine"), stamp)).toEqual({ ok: false, code: "changed-outside", message: `"${FILE}" was changed by another program since it was opened. Nothing was overwritten.` });
    expect(await read()).toMatchObject({ ok: true, episode: { title: "theirs" } });
  });

  it("never brings back a file that another program removed", async () => {
    const stamp = await saved(demoEpisode, null);
    rmSync(inLibrary(FILE));
    expect(await save(titled("mine"), stamp)).toMatchObject({ ok: false, code: "changed-outside" });
    expect(existsSync(inLibrary(FILE))).toBe(false);
  });

  it("never takes the name of a file that is there", async () => {
    await saved(demoEpisode, null);
    expect(await save(titled("another"), null)).toEqual({ ok: false, code: "name-taken", message: `"${FILE}" is already in the library. Choose another name.` });
  });

  it("agrees when the very same words are already there", async () => {
    const stamp = await saved(demoEpisode, null);
    expect(await save(demoEpisode, null)).toMatchObject({ ok: true, stamp });
    expect(existsSync(inLibrary(".history"))).toBe(false);
  });

  it("lets only one of two saves from the same state through", async () => {
    const stamp = await saved(demoEpisode, null);
    const answers = await Promise.all([save(titled("one"), stamp), save(titled("two"), stamp)]);
    expect(answers.map((answer) => answer.ok)).toEqual([true, false]);
    expect(await read()).toMatchObject({ episode: { title: "one" } });
  });

  it("keeps the permissions the file had", async () => {
    const stamp = await saved(demoEpisode, null);
    chmodSync(inLibrary(FILE), 0o640);
    await saved(titled("again"), stamp);
    expect(statSync(inLibrary(FILE)).mode & 0o777).toBe(process.platform === "win32" ? 0o666 : 0o640);
  });

  it("sweeps away what a power cut left behind, and leaves a running save alone", async () => {
    mkdirSync(library);
    const old = inLibrary(".saving-00000000-0000-4000-8000-000000000001.tmp");
    const young = inLibrary(".saving-00000000-0000-4000-8000-000000000002.tmp");
    writeFileSync(old, "half");
    writeFileSync(young, "half");
    utimesSync(old, new Date(0), new Date(0));
    await saved(demoEpisode, null);
    expect([existsSync(old), existsSync(young)]).toEqual([false, true]);
  });
});

describe("a disk that refuses", () => {
  it.each([
    ["open", "ENOSPC", "disk-full", "the disk is full"],
    ["rename", "ENOSPC", "disk-full", "the disk is full"],
    ["open", "EDQUOT", "disk-full", "your share of the disk is used up"],
    ["open", "EACCES", "no-permission", "may not be changed or read by you"],
    ["open", "EROFS", "read-only", "the disk can only be read"],
    ["rename", "EBUSY", "in-use", "another program has it open"],
    ["rename", "EXYZ", "disk-error", 'the system answered "EXYZ"'],
  ] as const)("says so when %s fails with %s, and the file stays as it was", async (operation, code, expected, words) => {
    const stamp = await saved(titled("before"), null);
    workspace.close();
    open(failing(operation, code));
    const answer = await save(titled("after"), stamp);
    expect(answer).toMatchObject({ ok: false, code: expected });
    expect(answer).toMatchObject({ message: expect.stringContaining(words) as unknown });
    expect(readFileSync(inLibrary(FILE), "utf8")).toBe(writeEpisode(titled("before")));
    expect(readdirSync(library).filter((name) => name.endsWith(".tmp"))).toEqual([]);
  });

  it("saves again once there is room", async () => {
    const stamp = await saved(titled("before"), null);
    workspace.close();
    let full = true;
    open({ ...nodeDisk, open: ((...args: Parameters<Disk["open"]>) => (full ? Promise.reject(Object.assign(new Error(), { code: "ENOSPC" })) : nodeDisk.open(...args))) as Disk["open"] });
    expect(await save(titled("after"), stamp)).toMatchObject({ ok: false });
    full = false;
    expect(await save(titled("after"), stamp)).toMatchObject({ ok: true });
  });

  it("waits a moment for a program that holds the file, as virus scanners do", async () => {
    const stamp = await saved(titled("before"), null);
    workspace.close();
    let held = 2;
    open({ ...nodeDisk, rename: (...args) => (held-- > 0 ? Promise.reject(Object.assign(new Error(), { code: "EBUSY" })) : nodeDisk.rename(...args)) });
    expect(await save(titled("after"), stamp)).toMatchObject({ ok: true });
    expect(await read()).toMatchObject({ episode: { title: "after" } });
  });

  it("names the library when it cannot be made", async () => {
    writeFileSync(library, "a file where the folder should be");
    expect(await save(demoEpisode, null)).toMatchObject({ ok: false, message: expect.stringContaining(library) as unknown });
    await expect(workspace.handlers["library:list"]({})).rejects.toThrow(`The library ${library} could not be read`);
  });
});

describe("opening", () => {
  const put = (bytes: string | Buffer, file = FILE): void => {
    mkdirSync(library, { recursive: true });
    writeFileSync(inLibrary(file), bytes);
  };
  const demo = writeEpisode(demoEpisode);
  const asJson = (change: (json: Record<string, unknown>) => void): string => {
    const json = JSON.parse(demo) as Record<string, unknown>;
    change(json);
    return JSON.stringify(json);
  };

  it.each<[string, string | Buffer, string, RegExp]>([
    ["an empty file", "", "empty", /The file is empty/],
    ["a file cut off in the middle", demo.slice(0, 700), "not-json", /it breaks at line \d+, column \d+/],
    ["another program's JSON", '{"name":"x"}', "not-an-episode", /"format" should be "repwright-episode"/],
    ["a newer version", asJson((json) => (json["version"] = 9)), "newer-version", /version 9/],
    ["a wrong value", asJson((json) => (json["title"] = 7)), "bad-value", /At title: expected string/],
    ["a wrong value deep inside", demo.replace('"kind": "warm-up"', '"kind": "warmup"'), "bad-value", /At blocks\[1\]\.kind/],
    ["a key nobody knows", asJson((json) => (json["extra"] = 1)), "bad-value", /extra/],
    ["a prototype smuggled in", demo.replace("{", '{"__proto__": {"polluted": true},'), "bad-value", /__proto__/],
    ["a path as id", asJson((json) => (json["id"] = "../../etc/passwd")), "bad-value", /At id: expected 1 to 64 letters/],
    ["a hundred thousand blocks", asJson((json) => (json["blocks"] = Array.from({ length: 100_000 }, () => ({})))), "bad-value", /100000 blocks, at most 400/],
    ["brackets without end", "[".repeat(200_000), "not-json", /not readable JSON/],
    ["bytes that are no text", Buffer.from([0x7b, 0x0a, 0x22, 0xff, 0xfe, 0x22]), "not-text", /line 2 holds other bytes/],
  ])("refuses %s with the place, and leaves it untouched", async (_what, bytes, code, words) => {
    put(bytes);
    const before = readFileSync(inLibrary(FILE));
    const answer = await read();
    expect(answer).toMatchObject({ ok: false, code });
    expect(answer).toMatchObject({ message: expect.stringMatching(words) as unknown });
    expect(readFileSync(inLibrary(FILE)).equals(before)).toBe(true);
    expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  });

  it("refuses 50 MB without reading it", async () => {
    put("{");
    truncateSync(inLibrary(FILE), 50 * 1024 * 1024);
    expect(await read()).toEqual({ ok: false, code: "too-big", message: `"${FILE}" is 50.0 MB; an episode is at most 8.0 MB.` });
  });

  it("reads a file with a byte order mark", async () => {
    put(`\uFEFF${demo}`);
    expect(await read()).toMatchObject({ ok: true, episode: demoEpisode });
  });

  it("does not save over a file it could not read", async () => {
    put("not json");
    expect(await save(demoEpisode, "0000")).toMatchObject({ ok: false, code: "changed-outside" });
    expect(await save(demoEpisode, null)).toMatchObject({ ok: false, code: "name-taken" });
    expect(readFileSync(inLibrary(FILE), "utf8")).toBe("not json");
  });

  it("refuses links that lead out of the library, follows those that stay", async () => {
    put(demo, "real.episode.json");
    writeFileSync(join(root, "outside.episode.json"), demo);
    symlinkSync(join(root, "outside.episode.json"), inLibrary("out.episode.json"));
    symlinkSync(join(root, "nothing-there"), inLibrary("dangling.episode.json"));
    symlinkSync("loop.episode.json", inLibrary("loop.episode.json"));
    symlinkSync("real.episode.json", inLibrary("in.episode.json"));
    expect(await read("out.episode.json")).toMatchObject({ ok: false, code: "outside" });
    expect(await save(demoEpisode, null, "dangling.episode.json")).toMatchObject({ ok: false, code: "outside" });
    expect(existsSync(join(root, "nothing-there"))).toBe(false);
    expect(await read("loop.episode.json")).toMatchObject({ ok: false });
    expect(await read("in.episode.json")).toMatchObject({ ok: true });
  });

  it("refuses folders and pipes of such a name", async () => {
    mkdirSync(inLibrary(FILE), { recursive: true });
    expect(await read()).toMatchObject({ ok: false, code: "not-a-file" });
    if (spawnSync("mkfifo", [inLibrary("pipe.episode.json")]).status === 0) expect(await read("pipe.episode.json")).toMatchObject({ ok: false, code: "not-a-file" });
  });

  it.each(["../week.episode.json", "a/b.episode.json", "a\\b.episode.json", ".hidden.episode.json", "week.json", "C:week.episode.json", "\u0000.episode.json"])("refuses the name %j", async (file) => {
    expect(await read(file)).toMatchObject({ ok: false, code: "bad-name" });
  });

  it("says which file is not there", async () => {
    expect(await read()).toEqual({ ok: false, code: "missing", message: `"${FILE}" could not be read: there is no such file or folder.` });
  });
});

describe("the list", () => {
  it("shows the newest first and says what is wrong with a damaged one", async () => {
    mkdirSync(library, { recursive: true });
    const files: [string, string, number][] = [["old.episode.json", writeEpisode(titled("Old")), 1000], ["new.episode.json", writeEpisode(titled("New")), 3000], ["broken.episode.json", "{", 2000]];
    for (const [file, text, time] of files) {
      writeFileSync(inLibrary(file), text);
      utimesSync(inLibrary(file), time, time);
    }
    writeFileSync(inLibrary("shopping.txt"), "oats");
    writeFileSync(inLibrary(".hidden.episode.json"), "{}");
    const list = await workspace.handlers["library:list"]({});
    expect(list.map(({ file, title, series }) => [file, title, series])).toEqual([
      ["new.episode.json", "New", "Strong for the Trail, episode 7"], ["broken.episode.json", null, null], ["old.episode.json", "Old", "Strong for the Trail, episode 7"],
    ]);
    expect(list[1]?.problem).toMatch(/not readable JSON/);
    writeFileSync(inLibrary("old.episode.json"), writeEpisode(titled("Old, mended")));
    expect((await workspace.handlers["library:list"]({}))[0]).toMatchObject({ title: "Old, mended" });
  });

  it("is empty in a library that does not exist yet", async () => {
    expect(await workspace.handlers["library:list"]({})).toEqual([]);
    expect(existsSync(library)).toBe(true);
  });
});

describe("older states", () => {
  const history = () => workspace.handlers["episode:history"]({ file: FILE });

  it("are what was there before each save, newest first, and can be read", async () => {
    let stamp = await saved(titled("one"), null);
    stamp = await saved(emptyEpisode(countingIds("e"), { title: "two" }), stamp);
    await saved(titled("three"), stamp);
    const states = await history();
    expect(states.map(({ blocks }) => blocks)).toEqual([0, 9]);
    expect(await workspace.handlers["episode:older"]({ file: FILE, state: states[1]?.state ?? "" })).toEqual({ ok: true, episode: titled("one") });
  });

  it("are not kept twice", async () => {
    let stamp = await saved(titled("a"), null);
    for (const title of ["b", "a", "b", "a", "b"]) stamp = await saved(titled(title), stamp);
    expect(await history()).toHaveLength(2);
  });

  it("stay within fifty", async () => {
    let stamp = await saved(titled("0"), null);
    for (let i = 1; i <= 60; i++) stamp = await saved(titled(String(i)), stamp);
    const states = await history();
    expect(states).toHaveLength(50);
    expect(await workspace.handlers["episode:older"]({ file: FILE, state: states[0]?.state ?? "" })).toMatchObject({ episode: { title: "59" } });
    expect(await workspace.handlers["episode:older"]({ file: FILE, state: states[49]?.state ?? "" })).toMatchObject({ episode: { title: "0" } });
  });

  it.each(["../../../etc/passwd", "20270304T064500000Z-000000000000", ""])("refuse the name %j", async (state) => {
    await saved(titled("b"), await saved(titled("a"), null));
    expect(await workspace.handlers["episode:older"]({ file: FILE, state })).toMatchObject({ ok: false, code: "missing" });
  });

  it("are not written through a link that leads out of the library", async () => {
    const stamp = await saved(titled("a"), null);
    const outside = join(root, "elsewhere");
    mkdirSync(outside, { recursive: true });
    symlinkSync(outside, inLibrary(".history"));
    await saved(titled("b"), stamp);
    expect(readdirSync(outside)).toEqual([]);
  });
});

describe("changes from outside", () => {
  const changes = () => heard.filter((message) => message.event === "library:changed").map((message) => message.payload);
  const settle = (ms = 500): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

  it("are told with the new stamp; our own saves are not", async () => {
    const stamp = await saved(titled("ours"), null);
    await saved(titled("ours again"), stamp);
    await settle();
    expect(changes()).toEqual([]);
    const theirs = Buffer.from(writeEpisode(titled("theirs")));
    writeFileSync(inLibrary(FILE), theirs);
    await vi.waitFor(() => expect(changes()).toEqual([{ file: FILE, stamp: stampOf(theirs) }]), 5000);
  });

  it("are told when a file goes and when one comes", async () => {
    await saved(demoEpisode, null);
    rmSync(inLibrary(FILE));
    await vi.waitFor(() => expect(changes()).toEqual([{ file: FILE, stamp: null }]), 5000);
    writeFileSync(inLibrary("new.episode.json"), "{}");
    await vi.waitFor(() => expect(changes()).toContainEqual({ file: "new.episode.json", stamp: stampOf(Buffer.from("{}")) }), 5000);
  });

  it("are silent when a file is touched and says the same", async () => {
    await saved(demoEpisode, null);
    await settle();
    writeFileSync(inLibrary(FILE), writeEpisode(demoEpisode));
    await settle();
    expect(changes()).toEqual([]);
  });

  it("are seen again after the library was removed and made anew", async () => {
    const stamp = await saved(demoEpisode, null);
    rmSync(library, { recursive: true });
    expect(await save(demoEpisode, stamp)).toMatchObject({ code: "changed-outside" });
    await saved(demoEpisode, null);
    await settle();
    heard = [];
    writeFileSync(inLibrary(FILE), "{}");
    await vi.waitFor(() => expect(changes()).toEqual([{ file: FILE, stamp: stampOf(Buffer.from("{}")) }]), 5000);
  });
});

describe("papers", () => {
  const request = { job: "j1", episode: demoEpisode, documents: ["handout.pdf"], paper: "a4", units: "kg" } as const;
  const make = (change: Partial<Parameters<Workspace["handlers"]["papers:export"]>[0]> = {}) => workspace.handlers["papers:export"]({ ...request, documents: [...request.documents], ...change });

  it("lie in a folder named like the episode's file, with progress on the way", async () => {
    await saved(demoEpisode, null);
    const answer = await make();
    expect(answer).toMatchObject({ ok: true, folder: inLibrary("papers", "week-7"), files: ["strong-for-the-trail-7-handout.pdf"] });
    expect(readFileSync(inLibrary("papers", "week-7", "strong-for-the-trail-7-handout.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
    expect(heard.filter((message) => message.event === "papers:progress").map((message) => message.payload)).toEqual([
      { job: "j1", done: 0, total: 1, document: "handout.pdf" }, { job: "j1", done: 1, total: 1, document: null },
    ]);
  });

  it("of an episode that was never saved are named by its title", async () => {
    expect(await make({ episode: emptyEpisode(countingIds("e"), { title: "Ränge & Züge: 2/3" }) })).toMatchObject({ ok: true, folder: inLibrary("papers", "ränge-züge-2-3") });
  });

  it("are the same bytes each time and in the preview", async () => {
    const answer = await make();
    const file = join(answer.ok ? answer.folder : "", answer.ok ? (answer.files[0] ?? "") : "");
    const first = readFileSync(file);
    await make();
    expect(readFileSync(file).equals(first)).toBe(true);
    const preview = await workspace.handlers["papers:render"]({ episode: demoEpisode, document: "handout.pdf", paper: "a4", units: "kg" });
    expect(preview.ok && Buffer.from(preview.base64, "base64").equals(first)).toBe(true);
  });

  it("can be stopped between two documents", async () => {
    workspace.listen((message) => {
      if (message.event === "papers:progress" && message.payload.done === 0) void workspace.handlers["papers:cancel"]({ job: "j1" });
    });
    expect(await make()).toMatchObject({ ok: false, code: "cancelled", message: expect.stringMatching(/^Stopped after 0 of 1 documents/) as unknown });
    expect(await workspace.handlers["papers:cancel"]({ job: "j1" })).toEqual({ cancelled: false });
  });

  it("are not made twice at once under one name", async () => {
    const [first, second] = await Promise.all([make(), make()]);
    expect([first.ok, second]).toEqual([true, { ok: false, code: "job-running", message: "These papers are already being made." }]);
  });

  it.each([["ENOSPC", "the disk is full"], ["EBUSY", "another program has it open"]])("say so when the disk answers %s", async (code, words) => {
    workspace.close();
    open(failing("rename", code));
    expect(await make()).toMatchObject({ ok: false, message: expect.stringContaining(words) as unknown });
  });

  it("are not written through a link that leads out of the library", async () => {
    mkdirSync(library, { recursive: true });
    const outside = join(root, "papers-elsewhere");
    mkdirSync(outside);
    symlinkSync(outside, inLibrary("papers"));
    expect(await make()).toMatchObject({ ok: false, code: "outside" });
  });
});

it("tells the screens what they run on", async () => {
  expect(await workspace.handlers["app:about"]({})).toEqual({ version: "1.2.3", window: "browser", library, start: null });
});
