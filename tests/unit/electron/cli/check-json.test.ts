import Ajv2020 from "ajv/dist/2020";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "../../../../electron/cli/program";
import { RULES, type Finding } from "../../../../shared/checks";
import { demoEpisode, emptyEpisode, countingIds, writeEpisode, type Edit, type Episode } from "../../../../shared/episode";

const schema = JSON.parse(readFileSync(join(process.cwd(), "electron", "cli", "findings.schema.json"), "utf8")) as {
  readonly items: { readonly required: readonly string[]; readonly properties: { readonly remedies: { readonly items: { readonly properties: { readonly edits: { readonly items: { readonly properties: { readonly type: { readonly enum: readonly string[] } } } } } } } } };
};
const validate = new Ajv2020({ strict: true }).compile(schema);
const folder = mkdtempSync(join(tmpdir(), "repwright-check-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The compiler asks for a field here as soon as a finding has one more, and refuses one that it has no longer. */
const FIELDS: Readonly<Record<keyof Finding, true>> = {
  key: true, rule: true, ruleVersion: true, level: true, moment: true, message: true, why: true, source: true, block: true, line: true, range: true, words: true, remedies: true, waiver: true,
};
const EDITS: Readonly<Record<Edit["type"], true>> = {
  "insert-block": true, "remove-block": true, "move-block": true, "set-block": true, "insert-line": true, "set-line": true, "remove-line": true,
  "insert-set": true, "set-set": true, "remove-set": true, "insert-alternate": true, "set-title": true, "set-facts": true,
};

async function check(text: string): Promise<{ code: number; out: string; err: string }> {
  const path = join(folder, "one.episode.json");
  writeFileSync(path, text);
  let out = "";
  let err = "";
  const code = await run(["check", path, "--json"], {
    stdin: Readable.from([]), out: async (part) => void (out += part), err: (part) => void (err += part), now: () => new Date("2027-03-01T10:00:00Z"), dist: join(process.cwd(), "dist"), ended: () => Promise.resolve(),
  });
  return { code, out, err };
}

const bare: Episode = {
  ...demoEpisode,
  blocks: demoEpisode.blocks.filter(({ kind }) => kind === "exercise").map((block) => ({
    ...block, alternates: [],
    lines: [{ id: `${block.id}-cue`, kind: "cue", text: "Arch your low back hard and hold your breath for the whole set" }, { id: `${block.id}-say`, kind: "say", text: "Bounce out of the bottom and push through the pain." }],
  })),
};
const episodes: readonly (readonly [string, Episode])[] = [["the demo", demoEpisode], ["an episode with everything missing", bare], ["an empty episode", emptyEpisode(countingIds("e"))]];

describe("check --json", () => {
  it("has a schema that names exactly the fields of a finding and the kinds of edits", () => {
    expect([...schema.items.required].sort()).toEqual(Object.keys(FIELDS).sort());
    expect(Object.keys(schema.items.properties).sort()).toEqual(Object.keys(FIELDS).sort());
    expect([...schema.items.properties.remedies.items.properties.edits.items.properties.type.enum].sort()).toEqual(Object.keys(EDITS).sort());
  });

  for (const [name, episode] of episodes) {
    it(`prints what the schema says for ${name}, the same each time`, async () => {
      const { code, out, err } = await check(writeEpisode(episode));
      const findings = JSON.parse(out) as Finding[];
      expect(validate(findings), JSON.stringify(validate.errors)).toBe(true);
      expect(err).toBe("");
      expect(code).toBe(findings.some(({ level, waiver }) => level === "stop" && waiver === null) ? 1 : 0);
      expect((await check(writeEpisode(episode))).out).toBe(out);
      expect(new Set(findings.map(({ key }) => key)).size).toBe(findings.length);
      const known = new Set(RULES.map(({ meta }) => meta.id));
      expect(findings.filter(({ rule }) => !known.has(rule))).toEqual([]);
    });
  }

  it("prints moments in the order of the work, in each the gravest first, and blocks as they come", async () => {
    const findings = JSON.parse((await check(writeEpisode(bare))).out) as Finding[];
    const place = ({ moment, level, block }: Finding): number =>
      ["before filming", "before speaking", "before publishing"].indexOf(moment) * 1e6 + ["stop", "fix", "consider"].indexOf(level) * 1e4 + (block === null ? 0 : bare.blocks.findIndex(({ id }) => id === block) + 1);
    expect(findings.length).toBeGreaterThan(20);
    expect(findings.map(place)).toEqual(findings.map(place).sort((a, b) => a - b));
    const inLine = findings.filter(({ range }) => range !== null);
    for (const { line, range, words } of inLine) {
      const text = bare.blocks.flatMap(({ lines, sets }) => [...lines, ...sets]).find(({ id }) => id === line)?.text ?? "";
      expect(text.slice(range?.start, range?.end)).toBe(words);
    }
    expect(inLine.length).toBeGreaterThan(5);
  });

  it("keeps a finding that was set aside listed with its reason, and it stops nothing", async () => {
    const before = JSON.parse((await check(writeEpisode(bare))).out) as Finding[];
    const waivers = before.filter(({ level }) => level === "stop").map((finding, i) => ({ id: `w${i}`, rule: finding.rule, ruleVersion: finding.ruleVersion, block: finding.block, line: finding.line, text: finding.words, reason: "Shown as what not to do." }));
    expect((await check(writeEpisode(bare))).code).toBe(1);
    const { code, out } = await check(writeEpisode({ ...bare, waivers }));
    const after = JSON.parse(out) as Finding[];
    expect(code).toBe(0);
    expect(validate(after), JSON.stringify(validate.errors)).toBe(true);
    expect(after.map(({ key }) => key)).toEqual(before.map(({ key }) => key));
    expect(after.filter(({ waiver }) => waiver?.reason === "Shown as what not to do.")).toHaveLength(waivers.length);
  });

  it("prints nothing on standard output and ends with 2 when the file cannot be read", async () => {
    const { code, out, err } = await check("{ not an episode");
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("one.episode.json");
  });

  it("has a schema that refuses another level, a field too many and a field too few", async () => {
    const [finding] = JSON.parse((await check(writeEpisode(bare))).out) as Finding[];
    const { why: _why, ...short } = finding ?? {};
    expect([validate([finding]), validate([{ ...finding, level: "error" }]), validate([{ ...finding, extra: 1 }]), validate([short])]).toEqual([true, false, false, false]);
  });
});
