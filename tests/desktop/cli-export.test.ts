import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { run } from "../../electron/cli/program";
import { placesIn } from "../../electron/places";
import { readFonts } from "../../electron/workspace/fonts";
import { countingIds, demoEpisode, writeEpisode } from "../../shared/episode";
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
