import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { run } from "../../electron/cli/program";
import { placesIn } from "../../electron/places";
import { readFonts } from "../../electron/workspace/fonts";
import { openWorkspace } from "../../electron/workspace";
import { episodeClocks } from "../../shared/clocks";
import { countingIds, demoEpisode, linesOf, writeEpisode, type Episode } from "../../shared/episode";
import { exporterFor, type DocumentId, type ExportOptions } from "../../shared/exports";
import { DEFAULT_PACE } from "../../shared/speech";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();
const newName = countingIds("export-");
const DIST = join(process.cwd(), "dist");
const NAME = "one.episode.json";

/** A library with the demo in it. */
function newLibrary(): string {
  const library = join(root, newName());
  mkdirSync(library);
  writeFileSync(join(library, NAME), writeEpisode(demoEpisode));
  return library;
}

/** What `repwright export` makes of the episode in a library: script, captions, and what it says. */
async function exported(library: string): Promise<{ readonly script: string; readonly captions: string; readonly said: readonly string[] }> {
  let [out, err] = ["", ""];
  const code = await run(["export", join(library, NAME), "--to", join(root, newName()), "--only", "voiceover.txt,captions.vtt"], {
    stdin: Readable.from([]), out: async (text) => void (out += text), err: (text) => void (err += text),
    now: () => new Date("2027-03-01T10:00:00Z"), dist: DIST, ended: () => Promise.resolve(),
  });
  expect(code).toBe(0);
  const [script = "", captions = ""] = out.trimEnd().split("\n").map((path) => readFileSync(path, "utf8"));
  return { script, captions, said: err.trimEnd().split("\n") };
}

/** The same from the core alone. */
async function rendered(document: DocumentId, options: Partial<ExportOptions>): Promise<string> {
  const fonts = await readFonts(placesIn(DIST).fonts);
  const { bytes } = await exporterFor(document).render(demoEpisode, { paper: "a4", units: "kg", pace: DEFAULT_PACE, date: demoEpisode.session.date ?? "2000-01-01", fonts, ...options });
  return new TextDecoder().decode(bytes);
}

const voice = { pace: { syllablesPerSecond: 2.4, commaSeconds: 0.45, sentenceSeconds: 0.9, breathSeconds: 0.6 }, lines: 12, seconds: 64, at: "2027-03-04T10:00:00.000Z" };
const voiceFile = (content: unknown): string => JSON.stringify({ format: "repwright-voice", version: 1, voice: content });

describe("export counts at the pace of the folder the episode lies in", () => {
  it("the speaker's own where it was measured, and says so", async () => {
    const library = newLibrary();
    writeFileSync(join(library, "voice.json"), voiceFile(voice));
    const { script, captions, said } = await exported(library);
    expect(said).toContain("Counted at your own pace, 2.4 syllables a second, measured on 12 lines.");
    expect(captions).toBe(await rendered("captions.vtt", { pace: voice.pace }));
    expect(script).toBe(await rendered("voiceover.txt", { pace: voice.pace }));
    expect(captions).not.toBe(await rendered("captions.vtt", {}));
    expect(script).not.toBe(await rendered("voiceover.txt", {}));
  });

  it.each([
    ["none was measured", null, "Counted at the usual pace, 3.6 syllables a second; no pace was measured in the episode's folder."],
    ["it was given up", voiceFile(null), "Counted at the usual pace, 3.6 syllables a second; no pace was measured in the episode's folder."],
    ["it is not JSON", "{", "Your pace in voice.json is not JSON and is left as it is; the usual pace is used."],
    ["it is no pace", voiceFile({ ...voice, pace: { ...voice.pace, syllablesPerSecond: 0 } }), "Your pace in voice.json cannot be read and is left as it is; the usual pace is used."],
  ])("the usual one where %s, and says so", async (_why, kept, sentence) => {
    const library = newLibrary();
    if (kept !== null) writeFileSync(join(library, "voice.json"), kept);
    const { captions, said } = await exported(library);
    expect(said).toContain(sentence);
    expect(captions).toBe(await rendered("captions.vtt", {}));
  });
});

describe("check and time count at the same pace", () => {
  const answer = async (library: string, ...args: string[]): Promise<{ readonly out: string; readonly err: string }> => {
    let [out, err] = ["", ""];
    await run([args[0] ?? "", join(library, NAME), ...args.slice(1)], {
      stdin: Readable.from([]), out: async (text) => void (out += text), err: (text) => void (err += text),
      now: () => new Date("2027-03-01T10:00:00Z"), dist: DIST, ended: () => Promise.resolve(),
    });
    return { out, err };
  };
  const own = "Counted at your own pace, 2.4 syllables a second, measured on 12 lines.\n";
  const usual = "Counted at the usual pace, 3.6 syllables a second; no pace was measured in the episode's folder.\n";
  const spoken = (json: string): number => (JSON.parse(json) as { blocks: { spokenSeconds: number }[] }).blocks.reduce((sum, block) => sum + block.spokenSeconds, 0);

  it("time says whose it is, and as JSON on stderr when it is the speaker's own", async () => {
    const [plain, learned] = [newLibrary(), newLibrary()];
    writeFileSync(join(learned, "voice.json"), voiceFile(voice));
    expect((await answer(plain, "time")).out.endsWith(usual)).toBe(true);
    expect((await answer(learned, "time")).out.endsWith(own)).toBe(true);
    const [before, after] = [await answer(plain, "time", "--json"), await answer(learned, "time", "--json")];
    expect([before.err, after.err]).toEqual(["", own]);
    expect(spoken(after.out)).toBeCloseTo(episodeClocks(demoEpisode, voice.pace).screen.blocks.reduce((sum, block) => sum + block.spoken.seconds, 0), 6);
    expect(spoken(after.out)).toBeGreaterThan(spoken(before.out) * 1.3);
  });

  it("check finds what does not fit the clip at that pace", async () => {
    const library = newLibrary();
    const over = async (): Promise<number> => (JSON.parse((await answer(library, "check", "--json")).out) as { message: string }[]).filter(({ message }) => / of words over a /.test(message)).length;
    const before = await over();
    writeFileSync(join(library, "voice.json"), voiceFile({ ...voice, pace: { ...voice.pace, syllablesPerSecond: 0.6 } }));
    expect(await over()).toBeGreaterThan(before);
    expect((await answer(library, "check")).out).toMatch(/Counted at your own pace, 0\.6 syllables a second/);
    writeFileSync(join(library, "voice.json"), "{");
    expect((await answer(library, "check", "--json")).err).toBe("Your pace in voice.json is not JSON and is left as it is; the usual pace is used.\n");
    expect(await over()).toBe(before);
  });
});

describe("captions are timed by the takes of a read-through", () => {
  const lines = demoEpisode.blocks.flatMap((block) => linesOf(block, "say"));
  const [first, second, third] = lines;
  /** A library in which two lines were read, and a third before its words were changed. */
  const withTakes = async (): Promise<{ readonly library: string; readonly workspace: ReturnType<typeof openWorkspace>; readonly episode: Episode }> => {
    const library = newLibrary();
    const workspace = openWorkspace({ library, fonts: placesIn(DIST).fonts, version: "1.2.3", window: "browser", start: null, now: () => new Date("2027-03-04T10:00:00Z") });
    for (const [line, text, seconds] of [[first, first?.text, 9], [second, second?.text, 2], [second, second?.text, 6.5], [third, "Other words than now.", 30]] as const) {
      const answer = await workspace.handlers["takes:tap"]({ file: NAME, line: line?.id ?? "", text: text ?? "", name: "line", planned: 3, seconds });
      expect(answer.ok).toBe(true);
    }
    const opened = await workspace.handlers["episode:open"]({ file: NAME });
    return { library, workspace, episode: opened.ok ? opened.episode : expect.fail(opened.message) };
  };
  const measured = new Map([[first?.id ?? "", { seconds: 9 }], [second?.id ?? "", { seconds: 6.5 }]]);
  const sentence = `2 of ${lines.length} lines are timed by their takes, the others at the pace.`;

  it("by the command line, which says how many", async () => {
    const { library, workspace } = await withTakes();
    const { captions, script, said } = await exported(library);
    expect(captions).toBe(await rendered("captions.vtt", { measured }));
    expect(captions).not.toBe(await rendered("captions.vtt", {}));
    expect(script).toBe(await rendered("voiceover.txt", { measured }));
    expect(script.match(/\(measured\)/g)?.length).toBeGreaterThanOrEqual(2);
    expect(said.filter((line) => line === sentence)).toEqual([sentence]);
    workspace.close();
  });

  it("in the app, in the preview and in the papers alike, which say how many", async () => {
    const { workspace, episode } = await withTakes();
    const preview = await workspace.handlers["papers:render"]({ episode, document: "captions.vtt", paper: "a4", units: "kg" });
    expect(preview.ok && Buffer.from(preview.base64, "base64").toString("utf8")).toBe(await rendered("captions.vtt", { measured }));
    expect(preview.ok && preview.notes).toContain(sentence);
    const made = await workspace.handlers["papers:export"]({ job: "j", episode, documents: ["captions.srt", "captions.vtt"], paper: "a4", units: "kg" });
    expect(made.ok && made.notes.filter((note) => note === sentence)).toEqual([sentence]);
    expect(made.ok && readFileSync(join(made.folder, made.files[0] ?? ""), "utf8")).toBe(await rendered("captions.srt", { measured }));
    workspace.close();
  });

  it("and at the pace, with a word about it, where the list of takes cannot be read", async () => {
    const { library, workspace, episode } = await withTakes();
    writeFileSync(join(library, "takes", "one", "takes.json"), "{");
    const { captions, said } = await exported(library);
    expect(captions).toBe(await rendered("captions.vtt", {}));
    expect(said).toContainEqual(expect.stringMatching(/^The list of takes, .+ cannot be read .+ The words are timed at the pace alone\.$/));
    const preview = await workspace.handlers["papers:render"]({ episode, document: "captions.vtt", paper: "a4", units: "kg" });
    expect(preview.ok && preview.notes).toContainEqual(expect.stringMatching(/timed at the pace alone\.$/));
    const other = await workspace.handlers["papers:render"]({ episode, document: "handout.pdf", paper: "a4", units: "kg" });
    expect(other.ok && other.notes.join()).not.toContain("takes");
    workspace.close();
  });

  it("never through a link that leads out of the library", async () => {
    const library = newLibrary();
    const { library: elsewhere, workspace } = await withTakes();
    symlinkSync(join(elsewhere, "takes"), join(library, "takes"));
    const { captions, said } = await exported(library);
    expect(captions).toBe(await rendered("captions.vtt", {}));
    expect(said).toContainEqual(expect.stringMatching(/is a link to a place outside the library; it is left alone\. The words are timed at the pace alone\.$/));
    workspace.close();
  });
});

it("export writes words as the series says them, and counts them so", async () => {
  const library = newLibrary();
  const plain = await exported(library);
  const series = { ...demoEpisode.series, pronunciations: [{ written: "backpack", said: "bag that hangs on both shoulders" }] };
  writeFileSync(join(library, NAME), writeEpisode({ ...demoEpisode, series }));
  const { script, captions } = await exported(library);
  expect(plain.script).not.toContain("bag that hangs on both shoulders");
  expect(script).toContain("bag that hangs on both shoulders");
  expect(captions).not.toBe(plain.captions);
});
