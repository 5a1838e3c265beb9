import { existsSync, mkdirSync, readFileSync, readdirSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { pathToFileURL } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { episodeClocks } from "../../shared/clocks";
import type { Finding } from "../../shared/checks";
import { applyEdits, countingIds, demoEpisode, emptyBlock, newLine, readEpisode, writeEpisode, type Episode } from "../../shared/episode";
import { DOCUMENT_IDS, EXPORTERS } from "../../shared/exports";
import { run } from "../../electron/cli/program";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();
const demoFile = join(root, "demo.episode.json");
const newName = countingIds("case-");

interface Result {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line with some standard input; `ended` is the moment somebody presses Ctrl+C. */
async function repwright(args: readonly string[], stdin: string | readonly (string | Buffer)[] = "", ended: () => Promise<void> = () => Promise.resolve()): Promise<Result> {
  let out = "";
  let err = "";
  const code = await run(args, {
    stdin: Readable.from(typeof stdin === "string" ? [stdin] : stdin),
    out: async (text) => void (out += text),
    err: (text) => void (err += text),
    now: () => new Date("2027-03-01T10:00:00Z"),
    dist: join(process.cwd(), "dist"),
    ended,
  });
  return { code, out, err };
}

/** Writes an episode to a new file and gives its path. */
function file(episode: Episode | string): string {
  const path = join(root, `${newName()}.episode.json`);
  writeFileSync(path, typeof episode === "string" ? episode : writeEpisode(episode));
  return path;
}

const jsonLines = (text: string): Record<string, unknown>[] => text.trimEnd().split("\n").map((line) => JSON.parse(line) as Record<string, unknown>);

/** An exercise block that tells people to work through sharp pain. */
const hurtful = (): Episode => {
  const newId = countingIds("hurt-");
  const block = emptyBlock(newId, "exercise", { title: "Back squat", exercise: "back-squat", lines: [newLine(newId, "cue", "If the knee gives a sharp stabbing pain, push through it and add weight")] });
  return applyEdits(demoEpisode, [{ type: "insert-block", at: 3, block }]);
};

/** Tests may run before anything is built; the phone sheet's page is small and made at once. */
const { bundlePhoneSheet } = (await import(pathToFileURL(join(process.cwd(), "electron", "start-up", "phone-sheet.mjs")).href)) as { bundlePhoneSheet: () => Promise<void> };

beforeAll(async () => {
  writeFileSync(demoFile, writeEpisode(demoEpisode));
  await bundlePhoneSheet();
});

describe("check --list and --explain", () => {
  it("names every rule in a line, by subject", async () => {
    const { code, out } = await repwright(["check", "--list"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^structure$/m);
    expect(out).toMatch(/^ {2}closing-shot \(fix\): The closing has a shot\.$/m);
    expect(Number(/^(\d+) rules\.$/m.exec(out)?.[1])).toBeGreaterThanOrEqual(60);
  });
  it("explains one rule with its reason, source and limits", async () => {
    const { code, out } = await repwright(["check", "--explain", "min-rest"]);
    expect(code).toBe(0);
    expect(out).toMatch(/Why: .*\n {2}Source: NSCA.*\n {2}Limits: maxReps 6, percent 85, seconds 120/);
  });
  it("refuses an unknown rule by name", async () => {
    const { code, err } = await repwright(["check", "--explain", "no-such-rule"]);
    expect([code, err]).toEqual([2, expect.stringContaining('There is no rule "no-such-rule"')]);
  });
});

describe("check", () => {
  it("gives a stable array with --json, as the core finds it", async () => {
    const [first, second] = [await repwright(["check", demoFile, "--json"]), await repwright(["check", demoFile, "--json"])];
    expect(first.out).toBe(second.out);
    const findings = JSON.parse(first.out) as Finding[];
    expect(Array.isArray(findings)).toBe(true);
    for (const finding of findings) expect(Object.keys(finding)).toEqual(expect.arrayContaining(["key", "rule", "level", "moment", "message", "source", "block", "line", "waiver"]));
    expect(first.code).toBe(findings.some((finding) => finding.level === "stop" && finding.waiver === null) ? 1 : 0);
  });

  it("exits with 1 while a stop stands, and with 0 once it is waived with a reason", async () => {
    const episode = hurtful();
    const { code, out } = await repwright(["check", file(episode), "--json"]);
    expect(code).toBe(1);
    const stops = (JSON.parse(out) as Finding[]).filter((finding) => finding.level === "stop");
    const waivers = stops.map((finding, i) => ({ id: `w${i}`, rule: finding.rule, ruleVersion: finding.ruleVersion, block: finding.block, line: finding.line, text: finding.words, reason: "Shown as what not to do." }));
    const waived = await repwright(["check", file(applyEdits(episode, [{ type: "set-facts", fields: { waivers } }]))]);
    expect(waived.code).toBe(0);
    expect(waived.out).toContain("Waived\n");
    expect(waived.out).toContain("because: Shown as what not to do.");
  });

  it("tells people in sentences under the moment they matter", async () => {
    const { out } = await repwright(["check", file(hurtful())]);
    expect(out).toMatch(/^Before (filming|speaking|publishing)$/m);
    expect(out).toMatch(/^ {2}stop: 4\. Back squat: .+$/m);
    expect(out).toMatch(/^\d+ findings?: \d+ stop, \d+ fix, \d+ consider\.$/m);
  });
});

describe("time", () => {
  it("gives both clocks of the core with --json, per block and in all", async () => {
    const { code, out } = await repwright(["time", demoFile, "--json"]);
    const answer = JSON.parse(out) as { gymSeconds: number; screenSeconds: number; slotSeconds: number; targetSeconds: number; blocks: { title: string; gymSeconds: number; screenSeconds: number }[] };
    const clocks = episodeClocks(demoEpisode);
    expect(code).toBe(0);
    expect(answer).toMatchObject({ gymSeconds: clocks.gym.seconds, slotSeconds: 4500, screenSeconds: clocks.screen.seconds, targetSeconds: 600 });
    expect(answer.blocks.map((block) => block.title)).toEqual(demoEpisode.blocks.map((block) => block.title));
    expect(answer.blocks.reduce((sum, block) => sum + block.gymSeconds, 0)).toBeCloseTo(answer.gymSeconds, 6);
  });

  it("gives a table of minutes and seconds", async () => {
    const { out } = await repwright(["time", demoFile]);
    expect(out).toMatch(/^2\. Warm-up +8:00 +1:00$/m);
    expect(out).toMatch(/^Gym clock: \d+:\d\d of the 1:15:00 booked/m);
    expect(out).toMatch(/^Screen clock: \d+:\d\d of 10:00 aimed for/m);
  });

  it("says which set line it could not count", async () => {
    const newId = countingIds("t-");
    const block = emptyBlock(newId, "exercise", { title: "Row", sets: [{ id: "odd", role: "working", text: "some, until it feels right" }] });
    const { out } = await repwright(["time", file(applyEdits(demoEpisode, [{ type: "insert-block", at: null, block }]))]);
    expect(out).toMatch(/^Row: the set line .+ could not be read and counts nothing\.$/m);
  });
});

describe("export", () => {
  it("writes every document, prints the paths, and says on stderr what was left out", async () => {
    const to = join(root, "papers", "all");
    const { code, out, err } = await repwright(["export", demoFile, "--to", to]);
    expect(err).toContain("One private note is left out of the voiceover script.\n");
    expect(code).toBe(0);
    expect(out.trimEnd().split("\n")).toEqual(DOCUMENT_IDS.map((id) => join(to, `strong-for-the-trail-7-${id}`)));
    expect(readdirSync(to)).toHaveLength(EXPORTERS.length);
    const begins: Record<string, string> = { pdf: "%PDF", docx: "PK\u0003\u0004", vtt: "WEBVTT\n\n1\n", srt: "1\n00:00:", txt: "Rows, presses, carries\nVoiceover script", html: "<!doctype html>" };
    for (const path of out.trimEnd().split("\n")) {
      const start = begins[path.slice(path.lastIndexOf(".") + 1)] ?? "";
      expect(readFileSync(path).subarray(0, start.length).toString("latin1")).toBe(start);
    }
  });

  it.each([["handout", ["handout.pdf"]], ["captions", ["captions.vtt", "captions.srt"]], ["voiceover.docx, shot-list", ["shot-list.pdf", "shot-list.docx", "voiceover.docx"]]])("--only %s writes just that", async (only, ids) => {
    const { out } = await repwright(["export", demoFile, "--to", join(root, newName()), "--only", only]);
    expect(out.trimEnd().split("\n").map((path) => ids.find((id) => path.endsWith(`-${id}`)))).toEqual(ids);
  });

  it("gives the same bytes each time, others on other paper and in other units", async () => {
    const bytes = async (...more: string[]): Promise<string> => {
      const { out } = await repwright(["export", demoFile, "--to", join(root, newName()), "--only", "handout", ...more]);
      return readFileSync(out.trimEnd()).toString("latin1");
    };
    const [once, again, letter, pounds] = [await bytes(), await bytes(), await bytes("--paper", "letter"), await bytes("--units", "lb")];
    expect(again === once).toBe(true);
    expect(letter === once).toBe(false);
    expect(pounds === once).toBe(false);
  });

  it.each([[["--only", "poster"], 'There is no document "poster"'], [["--only", " , "], "Name at least one document"], [["--paper", "a3"], "Allowed choices are a4, letter"], [["--units", "stone"], "Allowed choices are kg, lb"]])("refuses %j", async (flags, words) => {
    const to = join(root, newName());
    const { code, out, err } = await repwright(["export", demoFile, "--to", to, ...flags]);
    expect([code, out, existsSync(to)]).toEqual([2, "", false]);
    expect(err).toContain(words);
  });

  it("says when the folder cannot be made", async () => {
    const { code, err } = await repwright(["export", demoFile, "--to", join(demoFile, "papers")]);
    expect(code).toBe(2);
    expect(err).toMatch(/^The folder .+ could not be made: a part of its path is a file/);
  });
});

describe("a file that is no good", () => {
  const demo = writeEpisode(demoEpisode);
  const cases: [string, () => string, RegExp][] = [
    ["missing", () => join(root, "none.episode.json"), /there is no such file or folder\.$/],
    ["a folder", () => { const path = join(root, newName()); mkdirSync(path); return path; }, /is not an ordinary file\.$/],
    ["empty", () => file(""), /The file is empty\.$/],
    ["cut off", () => file(demo.slice(0, 900)), /it breaks at line \d+, column \d+\.$/],
    ["of another kind", () => file("[]"), /"format" should be "repwright-episode"/],
    ["newer", () => file(demo.replace('"version": 2', '"version": 3')), /The file has version 3; this program reads up to 2/],
    ["wrong deep inside", () => file(demo.replace('"kind": "cue"', '"kind": "tip"')), /At blocks\[1\]\.lines\[0\]\.kind: /],
    ["with one id twice", () => file(demo.replaceAll('"demo-2"', '"demo-1"')), /the id "demo-1" is used twice/],
    ["50 MB", () => { const path = file("{"); truncateSync(path, 50 * 1024 * 1024); return path; }, /is 50\.0 MB; an episode is at most 8\.0 MB\.$/],
  ];

  for (const command of [["check"], ["check", "--json"], ["time"], ["export", "--to", join(root, "never")]]) {
    it.each(cases)(`ends \`${command.slice(0, 2).join(" ")}\` with 2 and one sentence: %s`, async (_what, make, words) => {
      const path = make();
      const [name = "", ...flags] = command;
      const { code, out, err } = await repwright([name, path, ...flags]);
      expect([code, out]).toEqual([2, ""]);
      expect(err.trimEnd().split("\n")).toHaveLength(1);
      expect(err.trimEnd()).toMatch(words);
      expect(existsSync(join(root, "never"))).toBe(false);
    });
  }
});

describe("lines in, lines out", () => {
  it("sets: a scheme, or null and why", async () => {
    const { code, out } = await repwright(["sets"], '{"id":"a","text":"3 x 8-10 @ 40 kg, tempo 3-1-1-0, rest 90 s, RIR 2"}\n{"id":2,"text":"zero sets of nothing"}\n');
    expect(code).toBe(0);
    expect(jsonLines(out)).toEqual([
      { id: "a", parse: { sets: 3, repsMin: 8, repsMax: 10, load: { value: 40, unit: "kg" }, tempo: [3, 1, 1, 0], restSeconds: 90, rir: 2 } },
      { id: 2, parse: null, error: expect.stringMatching(/\w/) as unknown },
    ]);
  });

  it("say: seconds, words and syllables", async () => {
    const { out } = await repwright(["say"], '{"id":"a","text":"Start lighter than I did."}\n{"id":"b","text":""}');
    const [a, b] = jsonLines(out);
    expect(a).toMatchObject({ id: "a", words: 5, syllables: 6 });
    expect(a?.["seconds"]).toBeGreaterThan(0.8);
    expect(b).toEqual({ id: "b", seconds: 0, words: 0, syllables: 0 });
  });

  it("cues: labels, none for a good line", async () => {
    const records = [
      { id: "a", text: "If it stabs in the joint, grit your teeth and push through the sharp pain.", family: "squat", slot: "cue", audience: "general", exercise: "back squat" },
      { id: "b", text: "Stop if you feel sharp pain.", family: "squat", slot: "safety", audience: "older", exercise: null },
      { id: "c", text: "Whole foot on the floor." },
    ];
    const { code, out } = await repwright(["cues"], records.map((record) => JSON.stringify(record)).join("\n"));
    expect(code).toBe(0);
    expect(jsonLines(out)).toEqual([{ id: "a", labels: ["pain-push"] }, { id: "b", labels: [] }, { id: "c", labels: [] }]);
  });

  it("answers each record on its own line, in order, also those it cannot read, and then exits with 2", async () => {
    const { code, out, err } = await repwright(["sets"], '\uFEFF{"id":1,"text":"3x5"}\r\nnot json\n\n{"id":3}\n{"text":"2x5"}\n[1]\n{"id":{"x":1},"text":"2x5"}\n');
    expect(code).toBe(2);
    expect(jsonLines(out).map((answer) => [answer["id"], answer["parse"] === null, answer["error"]])).toEqual([
      [1, false, undefined],
      [null, true, "Line 2 is not readable JSON."],
      [3, true, expect.stringMatching(/^Line 4, at text: /)],
      [null, false, undefined],
      [null, true, expect.stringMatching(/^Line 6, at the top: /)],
      [null, true, expect.stringMatching(/^Line 7, at id: /)],
    ]);
    expect(err.trimEnd().split("\n")).toHaveLength(4);
  });

  it.each(["cues", "say"])("%s gives its own fields as null when a line is bad", async (command) => {
    const { code, out } = await repwright([command], "{");
    expect(code).toBe(2);
    expect(jsonLines(out)).toEqual([{ id: null, ...(command === "cues" ? { labels: null } : { seconds: null, words: null, syllables: null }), error: "Line 1 is not readable JSON." }]);
  });

  it("joins characters that arrive in pieces", async () => {
    const bytes = Buffer.from('{"id":"é💪","text":"3×10"}\n', "utf8");
    const { out } = await repwright(["sets"], [...bytes].map((byte) => Buffer.from([byte])));
    expect(jsonLines(out)).toEqual([{ id: "é💪", parse: { sets: 3, repsMin: 10, repsMax: 10 } }]);
  });

  it("answers while the input is still coming", async () => {
    const answers: string[] = [];
    async function* input(): AsyncGenerator<string> {
      yield '{"id":1,"text":"3x5"}\n';
      await new Promise((resolve) => setTimeout(resolve, 20));
      expect(answers).toHaveLength(1);
      yield '{"id":2,"text":"3x5"}\n';
    }
    await run(["sets"], { stdin: Readable.from(input()), out: async (text) => void answers.push(text), err: () => undefined, now: () => new Date(0), dist: "", ended: () => Promise.resolve() });
    expect(answers).toHaveLength(2);
  });

  it("drops a line without end instead of keeping it all", async () => {
    const { code, out } = await repwright(["sets"], [...Array.from({ length: 20 }, () => "x".repeat(100_000)), '\n{"id":2,"text":"3x5"}\n']);
    expect(code).toBe(2);
    expect(jsonLines(out)).toMatchObject([{ id: null, error: "Line 1 is longer than 1000000 characters." }, { id: 2 }]);
  });

  it("answers nothing to nothing", async () => {
    expect(await repwright(["say"], "\n \n")).toEqual({ code: 0, out: "", err: "" });
  });
});

describe("coverage", () => {
  const problem = {
    cameras: 1, moveSeconds: 45,
    blocks: [{
      id: "row", station: "bench", changeSeconds: 90,
      sets: [{ id: "1", kind: "ramp", seconds: 40, restSeconds: 30 }, { id: "2", kind: "working", seconds: 40, restSeconds: 90 }],
      wants: [{ id: "arms", mark: "side", need: "must", weight: 1, kind: "any" }, { id: "back", mark: "rear", need: "nice", weight: 2, kind: "working" }],
    }],
  };

  it("prints the plan", async () => {
    const { code, out, err } = await repwright(["coverage"], JSON.stringify(problem));
    expect([code, err]).toEqual([0, ""]);
    expect(JSON.parse(out)).toEqual({
      stands: [{ set: "1", camera: 1, mark: "side" }, { set: "2", camera: 1, mark: "rear" }],
      shots: [{ want: "arms", set: "1", camera: 1 }, { want: "back", set: "2", camera: 1 }],
      lost: [], moves: 1, extraSeconds: 15,
    });
  });

  it("plans around what no set can film, and says so", async () => {
    const wants = [{ id: "grip", mark: "side", need: "must", weight: 1, kind: "demo" }];
    const { code, out, err } = await repwright(["coverage"], JSON.stringify({ ...problem, blocks: [{ ...problem.blocks[0], wants }] }));
    expect([code, (JSON.parse(out) as { lost: unknown }).lost]).toEqual([0, ["grip"]]);
    expect(err).toBe('At blocks[0].wants[0].kind: "grip" asks for a set of the kind "demo", and block "row" has none.\n');
  });

  it.each([
    ["", "There is no problem on standard input: repwright coverage < problem.json\n"],
    ["{", "The problem on standard input is not readable JSON.\n"],
    [JSON.stringify({ ...problem, cameras: 3 }), "At cameras: expected one camera or two.\n"],
  ])("refuses %j with 2 and a sentence", async (input, sentence) => {
    expect(await repwright(["coverage"], input)).toEqual({ code: 2, out: "", err: sentence });
  });
});

describe("demo and serve", () => {
  it("demo prints an episode that reads back", async () => {
    const { out } = await repwright(["demo"]);
    expect(readEpisode(out)).toEqual({ ok: true, episode: demoEpisode, migratedFrom: null });
  });

  it("demo --to writes it", async () => {
    const path = join(root, "written.episode.json");
    expect(await repwright(["demo", "--to", path])).toEqual({ code: 0, out: `${path}\n`, err: "" });
    expect(readFileSync(path, "utf8")).toBe(writeEpisode(demoEpisode));
    expect(await repwright(["demo", "--to", join(root, "no", "such", "folder.json")])).toMatchObject({ code: 2, err: expect.stringContaining("was not written: there is no such file or folder.") as unknown });
  });

  it("serve prints its address and serves until it is told to end", async () => {
    let printed = "";
    const library = join(root, "served");
    const code = await run(["serve", "--library", library], {
      stdin: Readable.from([]),
      out: async (text) => void (printed += text),
      err: () => undefined,
      now: () => new Date(0),
      dist: join(process.cwd(), "dist"),
      ended: async () => expect((await fetch(printed.trim(), { redirect: "manual" })).status).toBe(303),
    });
    expect(code).toBe(0);
    await expect(fetch(printed.trim())).rejects.toThrow();
  });

  it.each([["70000"], ["-1"], ["x"], ["80.5"]])("serve refuses the port %s", async (port) => {
    expect(await repwright(["serve", "--port", port])).toMatchObject({ code: 2, out: "" });
  });
});

describe("the command line itself", () => {
  it("lists its commands, and only those that exist", async () => {
    const { code, out } = await repwright(["--help"]);
    expect(code).toBe(0);
    for (const command of ["check", "export", "time", "cues", "sets", "say", "coverage", "import", "demo", "serve"]) expect(out).toMatch(new RegExp(`^ {2}${command}\\b`, "m"));
  });

  it("gives its version", async () => {
    expect(await repwright(["--version"])).toMatchObject({ code: 0, out: "0.1.0\n" });
  });

  it.each([[[]], [["fly"]], [["check"]], [["check", demoFile, "--loud"]], [["export", demoFile]]])("ends %j with 2 and says why", async (args) => {
    const { code, out, err } = await repwright(args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).not.toBe("");
  });
});
