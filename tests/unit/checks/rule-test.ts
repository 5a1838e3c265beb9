import { describe, expect, it } from "vitest";
import { checkEpisode, type CheckContext, type Finding, type Rule } from "../../../shared/checks";
import type { RawFinding } from "../../../shared/checks/define-rule";
import { episodeClocks } from "../../../shared/clocks";
import { applyEdits, BLOCK_KINDS, countingIds, emptyBlock, emptyEpisode, episodeSchema, newLine, type Block, type BlockKind, type Episode, type LineKind } from "../../../shared/episode";

/**
 * An episode from a short script. A block begins with `[kind exercise-id, clip 24, minutes 8] Title`; its lines are typed as a coach
 * would: `cue: ...`, `sets: ...`, `ramp-up: ...`, `if taken: ...`.
 */
export function episodeOf(script: string, fields: Partial<Episode> = {}): Episode {
  const newId = countingIds("t");
  const blocks: Block[] = [];
  for (const row of script.split("\n").map((line) => line.trim()).filter(Boolean)) {
    const head = /^\[([a-z-]+)(?: ([a-z0-9-]+))?((?:, \w+ [\d.]+)*)\] ?(.*)$/.exec(row);
    if (head) {
      const facts = new Map([...(head[3] ?? "").matchAll(/, (\w+) ([\d.]+)/g)].map((match) => [match[1], Number(match[2])]));
      const kind = BLOCK_KINDS.find((each) => each === head[1]) satisfies BlockKind | undefined;
      if (!kind) throw new Error(`episodeOf: there is no kind of block "${head[1]}"`);
      blocks.push(emptyBlock(newId, kind, { title: head[4] ?? "", exercise: head[2] ?? null, clipSeconds: facts.get("clip") ?? null, minutes: facts.get("minutes") ?? null }));
      continue;
    }
    const [, word = "", text = ""] = /^([a-z -]+): ?(.*)$/.exec(row) ?? [];
    const block = blocks.at(-1);
    if (!block || word === "") throw new Error(`episodeOf: cannot place "${row}"`);
    if (word === "sets" || word === "ramp-up") block.sets.push({ id: newId(), role: word === "sets" ? "working" : "ramp-up", text });
    else if (word === "if taken") block.alternates.push({ id: newId(), text });
    else block.lines.push(newLine(newId, word as LineKind, text));
  }
  return episodeSchema.parse(emptyEpisode(newId, { ...fields, blocks }));
}

/** What a rule is given: clocks computed, a fixed day, ids in sequence. */
export function contextOf(episode: Episode, newId = countingIds("new-")): CheckContext {
  return { episode, clocks: episodeClocks(episode), now: "2027-03-01T09:00:00Z", newId };
}

/** Freezes a value and everything in it, so that a rule that changes its input throws. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(deepFreeze);
  }
  return value;
}

interface Case {
  readonly name?: string;
  readonly script: string;
  readonly fields?: Partial<Episode>;
  readonly options?: Readonly<Record<string, number | string | boolean>>;
}

interface Expected {
  readonly message: string;
  /** The words at fault. */
  readonly at?: string;
  /** The whole sentence, where it matters. */
  readonly says?: string;
  readonly level?: Finding["level"];
  /** How many remedies are offered; any number when left out. */
  readonly remedies?: number;
}

interface Invalid extends Case {
  readonly errors: readonly Expected[];
}

const nameOf = (test: Case): string => test.name ?? test.script.trim().split("\n").at(-1)?.trim() ?? "empty";
const signature = (finding: Pick<RawFinding, "block" | "line" | "words" | "messageKey">): string => [finding.block, finding.line, finding.words, finding.messageKey].join("|");

/** Everything a finding must be whatever its rule. */
function expectSound(rule: Rule, episode: Episode, finding: RawFinding): void {
  expect(finding.message, "an unfilled placeholder").not.toMatch(/[{}]|undefined|NaN|null/);
  expect(finding.message, "a sentence").toMatch(/^["\p{Lu}\d].*[.?!]$/u);
  expect(rule.meta.messages, "an unknown message key").toHaveProperty(finding.messageKey);
  const block = finding.block === null ? null : episode.blocks.find(({ id }) => id === finding.block);
  if (finding.block !== null) expect(block, "the block exists").toBeDefined();
  if (finding.line === null) return;
  const line = [...(block?.sets ?? []), ...(block?.lines ?? []), ...(block?.alternates ?? [])].find(({ id }) => id === finding.line);
  expect(line, "the line stands in the block").toBeDefined();
  if (!finding.range || !line) return;
  expect(finding.range.start).toBeGreaterThanOrEqual(0);
  expect(finding.range.end).toBeGreaterThan(finding.range.start);
  expect(finding.range.end).toBeLessThanOrEqual(line.text.length);
  expect(line.text.slice(finding.range.start, finding.range.end)).toBe(finding.words);
}

/** Every remedy mends its finding, leaves a valid file, and brings no new finding of the same rule. */
function expectRemediesMend(rule: Rule, episode: Episode, found: readonly RawFinding[]): void {
  for (const finding of found) {
    for (const remedy of finding.remedies) {
      const mended = applyEdits(episode, remedy.edits);
      expect(mended, `"${remedy.label}" changes the episode`).not.toBe(episode);
      expect(episodeSchema.safeParse(mended).success, `"${remedy.label}" leaves a valid episode`).toBe(true);
      const left = rule.inspect(contextOf(mended, countingIds("again-")));
      expect(left.map(signature), `"${remedy.label}" mends the finding`).not.toContain(signature(finding));
      const before = new Set(found.map(signature));
      expect(left.filter((each) => !before.has(signature(each))).map(({ message }) => message), `"${remedy.label}" brings nothing new`).toEqual([]);
    }
  }
}

/**
 * Tests one rule: silent on `valid`, exactly `errors` on `invalid`. Beside that it checks what people forget: no case twice, input
 * left alone, ranges inside the text, every message seen, no unfilled placeholder, remedies that mend, the same answer twice.
 */
export function ruleTest(rule: Rule, cases: { valid: readonly (string | Case)[]; invalid: readonly Invalid[] }): void {
  const valid = cases.valid.map((test): Case => (typeof test === "string" ? { script: test } : test));
  describe(`rule ${rule.meta.id}`, () => {
    it.each(valid.map((test) => [nameOf(test), test] as const))("is silent: %s", (_name, test) => {
      const context = contextOf(deepFreeze(episodeOf(test.script, test.fields)));
      expect(rule.inspect(context, test.options).map(({ message }) => message)).toEqual([]);
    });
    it.each(cases.invalid.map((test) => [nameOf(test), test] as const))("finds: %s", (_name, test) => {
      const episode = deepFreeze(episodeOf(test.script, test.fields));
      const found = rule.inspect(contextOf(episode), test.options);
      expect(found.map(({ messageKey }) => messageKey)).toEqual(test.errors.map(({ message }) => message));
      test.errors.forEach((expected, i) => {
        const finding = found[i];
        if (!finding) return;
        if (expected.at !== undefined) expect(finding.words).toBe(expected.at);
        if (expected.says !== undefined) expect(finding.message).toBe(expected.says);
        if (expected.level !== undefined) expect(finding.level).toBe(expected.level);
        if (expected.remedies !== undefined) expect(finding.remedies).toHaveLength(expected.remedies);
      });
      found.forEach((finding) => expectSound(rule, episode, finding));
      expect(rule.inspect(contextOf(episode), test.options).map(signature), "the same answer twice").toEqual(found.map(signature));
      if (!test.options) expectRemediesMend(rule, episode, found);
      expect(() => checkEpisode(contextOf(episode))).not.toThrow();
    });
    it("has no case twice", () => {
      const all = [...valid, ...cases.invalid].map(({ script, fields, options }) => JSON.stringify([script.trim(), fields, options]));
      expect(new Set(all).size).toBe(all.length);
    });
    it("has every message hit, and both silent and finding cases", () => {
      expect(valid.length).toBeGreaterThan(0);
      const hit = new Set(cases.invalid.flatMap(({ errors }) => errors.map(({ message }) => message)));
      expect([...hit].sort()).toEqual(Object.keys(rule.meta.messages).sort());
    });
  });
}
