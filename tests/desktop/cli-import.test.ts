import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { run } from "../../electron/cli/program";
import { readEpisode } from "../../shared/episode";
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

const SRT = "1\r\n00:00:01,000 --> 00:00:03,000\r\nokay hello and welcome today first up goblin squats\r\n\r\n2\r\n00:00:03,000 --> 00:00:06,000\r\nthree sets of eight no sorry ten at twenty kilos um\r\n\r\n3\r\n00:00:06,000 --> 00:00:08,000\r\nand that's it for today thanks for watching\r\n";
const captions = join(root, "legs.srt");
writeFileSync(captions, SRT);

describe("repwright import", () => {
  it("writes the draft where it is told and says what was understood and what was not", async () => {
    const to = join(root, "legs.episode.json");
    const { code, out, err } = await repwright("import", captions, "--to", to);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toContain("sets: 3 x 10 @ 20 kg");
    expect(out).toContain("Not found: warm-up, cool-down.");
    expect(out).toContain('"um": Hesitations, left out of the lines.');
    const read = readEpisode(readFileSync(to, "utf8"));
    expect(read.ok && read.episode.blocks.map(({ kind, exercise }) => exercise ?? kind)).toEqual(["opening", "goblet-squat", "closing"]);
  });

  it("writes into a folder under the source's name, and prints the draft without a place to write to", async () => {
    const folder = join(root, "drafts");
    mkdirSync(folder);
    expect((await repwright("import", captions, "--to", folder)).code).toBe(0);
    expect(readEpisode(readFileSync(join(folder, "legs.episode.json"), "utf8")).ok).toBe(true);
    const printed = await repwright("import", captions);
    expect(readEpisode(printed.out).ok).toBe(true);
    expect(printed.err).toContain("Understood");
  });

  it("reads typed notes without a bullet or an empty line", async () => {
    const notes = join(root, "notes.txt");
    writeFileSync(notes, "Leg day\nWarm up\n5 min bike\nFront squat 4x5 @ 60 kg\nelbows up\nBSS 3x10/side 2x12 kg\nSandbag shouldering 5x3 @ 50 kg\nbye: see you next week\n");
    const to = join(root, "notes.episode.json");
    const { code, out } = await repwright("import", notes, "--to", to);
    expect(code).toBe(0);
    expect(out).toContain("sets: 3x10/side 2x12 kg");
    const read = readEpisode(readFileSync(to, "utf8"));
    expect(read.ok && [read.episode.title, ...read.episode.blocks.map(({ kind, exercise, title }) => exercise ?? `${kind}: ${title}`)]).toEqual(["Leg day", "warm-up: Warm up", "front-squat", "bulgarian-split-squat", "exercise: Sandbag shouldering", "closing: Bye"]);
  });

  it("gives the report as JSON", async () => {
    const { out } = await repwright("import", captions, "--json");
    const report = JSON.parse(out) as Record<string, unknown>;
    expect(Object.keys(report).sort()).toEqual(["episode", "format", "missing", "notUnderstood", "ok", "pace", "problems", "sentences", "words"]);
  });

  it.each([
    ["nothing.vtt", Buffer.alloc(0), /was not imported\. There is nothing in it: the file is empty\.$/],
    ["clip.mp4", Buffer.from(Array.from({ length: 3000 }, (_, at) => (at * 13) % 29)), /was not imported\. The file is not text/],
    ["huge.srt", Buffer.alloc(50 * 1024 * 1024, "x "), /was not read\. The file is 50\.0 MB/],
  ])("refuses %s in one sentence", async (name, bytes, sentence) => {
    const path = join(root, name);
    writeFileSync(path, bytes);
    const { code, out, err } = await repwright("import", path);
    expect([code, out]).toEqual([2, ""]);
    expect(err.trim()).toMatch(sentence);
  });

  it("says so when there is no such file, or it is a folder", async () => {
    expect((await repwright("import", join(root, "none.srt"))).err).toMatch(/could not be read: there is no such file/);
    expect((await repwright("import", root)).err).toMatch(/is not an ordinary file/);
  });
});
