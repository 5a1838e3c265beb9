import { describe, expect, it } from "vitest";
import { checkEpisode, RULES, waiverFor, type CheckLevel, type Rule } from "../../../shared/checks";
import { defineBlockRule, defineRule } from "../../../shared/checks/define-rule";
import type { Range } from "../../../shared/checks/ranges";
import type { Edit, Episode } from "../../../shared/episode";
import { contextOf, episodeOf } from "./rule-test";

const meta = { version: 1, subject: "words", moment: "before filming", summary: "s", why: "w", source: { title: "t" }, messages: { hit: "Hit." } } as const;
interface Hit { readonly level?: CheckLevel; readonly range?: Range; readonly whole?: "block" | "episode"; readonly only?: RegExp; readonly yieldsTo?: string[]; readonly remedy?: [label: string, edit: (line: string) => Edit] }

/** A rule that finds something on every line whose text matches, at a range of it, on the whole block, or on the whole episode. */
const on = (id: string, { level = "fix", range, whole, only = /./, yieldsTo, remedy }: Hit = {}): Rule => whole === "episode"
  ? defineRule({ meta: { ...meta, id, level, ...(yieldsTo ? { yieldsTo } : {}) }, check: (_context, _options, report) => report({ message: "hit" }) })
  : defineBlockRule({
    meta: { ...meta, id, level, ...(yieldsTo ? { yieldsTo } : {}) },
    check: ({ block }, _options, report) => block.lines.filter(({ text }) => only.test(text)).forEach((line) => report({
      block, message: "hit", ...(whole ? {} : { line }), ...(range ? { range } : {}), remedies: remedy ? [{ label: remedy[0], edits: [remedy[1](line.id)] }] : [],
    })),
  });

const episode = episodeOf("[talk] One\nsay: Four words of speech\n[talk] Two\nsay: Another line");
const found = (...rules: Rule[]): string[] => checkEpisode(contextOf(episode), rules).map(({ rule, line }) => `${rule}${line === null ? "" : line === episode.blocks[0]?.lines[0]?.id ? " 1" : " 2"}`);

describe("a finding whose cause is named by another rule", () => {
  it("falls silent on the same words, on words that overlap, and on the same line", () => {
    for (const range of [{ start: 0, end: 4 }, { start: 2, end: 9 }]) expect(found(on("cause", { range: { start: 0, end: 4 } }), on("effect", { range, yieldsTo: ["cause"] }))).toEqual(["cause 1", "cause 2"]);
    expect(found(on("cause", { range: { start: 0, end: 4 } }), on("effect", { yieldsTo: ["cause"] }))).toEqual(["cause 1", "cause 2"]);
  });
  it("speaks on other words of the line, and on other lines and blocks", () => {
    expect(found(on("cause", { range: { start: 0, end: 4 } }), on("effect", { range: { start: 5, end: 9 }, yieldsTo: ["cause"] }))).toEqual(["cause 1", "effect 1", "cause 2", "effect 2"]);
    expect(found(on("cause", { only: /Four/ }), on("effect", { yieldsTo: ["cause"] }))).toEqual(["cause 1", "effect 2"]);
  });
  it("falls silent when the whole block, or the whole episode, has the cause", () => {
    expect(found(on("cause", { whole: "block", only: /Four/ }), on("effect", { yieldsTo: ["cause"] }))).toEqual(["cause", "effect 2"]);
    expect(found(on("cause", { whole: "episode" }), on("effect", { yieldsTo: ["cause"] }))).toEqual(["cause"]);
  });
  it("never makes way for a milder one", () => {
    expect(found(on("cause", { level: "consider" }), on("effect", { level: "fix", yieldsTo: ["cause"] }))).toEqual(["effect 1", "effect 2", "cause 1", "cause 2"]);
  });
  it("stays silent when its cause has a cause", () => {
    expect(found(on("effect", { yieldsTo: ["cause"] }), on("cause", { yieldsTo: ["root"] }), on("root"))).toEqual(["root 1", "root 2"]);
  });
  it("stays silent when the series leaves nothing out but speaks when it leaves the cause out", () => {
    const rules = [on("cause", { level: "consider" }), on("effect", { level: "consider", yieldsTo: ["cause"] })];
    const quiet: Episode = { ...episode, series: { ...episode.series, quiet: ["cause"] } };
    expect(checkEpisode(contextOf(quiet), rules).map(({ rule }) => rule)).toEqual(["effect", "effect"]);
  });
});

describe("two findings that blame the same words", () => {
  const range = { start: 0, end: 4 };
  const add = (text: string) => (line: string): Edit => ({ type: "set-line", line, fields: { text } });
  it("are one: the gravest speaks and keeps the other's remedies", () => {
    const findings = checkEpisode(contextOf(episode), [on("mild", { level: "consider", range, remedy: ["One way", add("one")] }), on("grave", { level: "stop", range, remedy: ["Another way", add("another")] })]);
    expect(findings.map(({ rule }) => rule)).toEqual(["grave", "grave"]);
    expect(findings[0]?.remedies.map(({ label }) => label)).toEqual(["Another way", "One way"]);
  });
  it("offer what does the same only once, whatever it is called", () => {
    const findings = checkEpisode(contextOf(episode), [on("a", { range, remedy: ["Takes it out", add("")] }), on("b", { range, remedy: ["Removes the words", add("")] })]);
    expect(findings[0]?.remedies.map(({ label }) => label)).toEqual(["Takes it out"]);
  });
  it("are one when a rule finds two things in words that overlap, and two when they do not", () => {
    const twice = (second: Range): Rule => defineBlockRule({
      meta: { ...meta, id: "twice", level: "fix" },
      check: ({ block }, _options, report) => block.lines.forEach((line) => [range, second].forEach((each) => report({ block, line, range: each, message: "hit" }))),
    });
    expect(checkEpisode(contextOf(episode), [twice({ start: 2, end: 8 })])).toHaveLength(2);
    expect(checkEpisode(contextOf(episode), [twice({ start: 5, end: 8 })])).toHaveLength(4);
  });
});

describe("a message with a version of its own", () => {
  const rule = (versions: { hit?: number }): Rule => defineBlockRule({
    meta: { ...meta, id: "twofold", level: "stop", messages: { hit: "Hit.", other: "Other." }, versions },
    check: ({ block }, _options, report) => block.lines.forEach((line, i) => report({ block, line, message: block.title === "One" && i === 0 ? "hit" : "other" })),
  });
  it("asks again when it changes, and the rule's other messages do not", () => {
    const waivers = checkEpisode(contextOf(episode), [rule({})]).map((finding, i) => waiverFor(finding, `w${i}`, "Meant so"));
    const waived = checkEpisode(contextOf({ ...episode, waivers }), [rule({ hit: 2 })]).map(({ waiver }) => waiver !== null);
    expect(waived).toEqual([false, true]);
  });
});

describe("the causes that the rules name", () => {
  it("are rules, and lead back to no rule on the way", () => {
    const causes = new Map(RULES.map(({ meta: { id, yieldsTo } }) => [id, yieldsTo ?? []]));
    const walk = (id: string, path: readonly string[]): void => {
      expect(path, `${id} is its own cause`).not.toContain(id);
      expect(causes.has(id), `${id} is a rule`).toBe(true);
      for (const next of causes.get(id) ?? []) walk(next, [...path, id]);
    };
    for (const id of causes.keys()) walk(id, []);
  });
});

describe("what one mistake leads to in the whole book", () => {
  const rulesFor = (script: string): string[] => checkEpisode(contextOf(episodeOf(script))).map(({ rule }) => rule);
  const onLine = (script: string, text: string): string[] => {
    const made = episodeOf(script);
    const line = made.blocks.flatMap(({ lines }) => lines).find((each) => each.text === text);
    return checkEpisode(contextOf(made)).filter((finding) => finding.line === line?.id).map(({ rule }) => rule);
  };

  it("a missing warm-up is neither short, late, stiff nor unfilmed", () => {
    expect(rulesFor("[exercise back-squat] Squat").filter((rule) => rule.includes("warm-up"))).toEqual(["warm-up"]);
  });
  it("a missing opening or closing has no missing shot", () => {
    const rules = rulesFor("[exercise plank] Plank");
    expect(rules).toEqual(expect.arrayContaining(["opening", "closing"]));
    expect(rules.filter((rule) => /opening-|closing-/.test(rule))).toEqual([]);
  });
  it("a late warm-up is not asked which joints it leaves out", () => {
    expect(rulesFor("[exercise back-squat] Squat\n[warm-up, minutes 8] Warm-up\nshot: Front, 10 s: circles").filter((rule) => rule.includes("warm-up"))).toEqual(["warm-up-first"]);
  });
  it("a set line that cannot be read is not held against the shots", () => {
    const rules = rulesFor("[exercise plank] Plank\nsets: 2 x 30 s\nsets: as it comes\nshot: Side, full, set 3, 10 s: line");
    expect(rules).toContain("unreadable-set-line");
    expect(rules).not.toContain("shot-set");
  });
  it("a small exercise before a heavy one is out of order once", () => {
    const rules = rulesFor("[exercise leg-extension] Extension\nsets: 3 x 15 @ 20 kg\n[exercise back-squat] Squat\nsets: 5 x 5 @ 80 kg");
    expect(rules.filter((rule) => rule === "exercise-order" || rule === "heavy-first")).toEqual(["exercise-order"]);
  });
  it.each([
    ["[exercise goblet-squat] Squat\ncue: Knees out\ncue: Let your knees cave in", "Let your knees cave in", ["no-unsafe-cue"]],
    ["[exercise goblet-squat] Squat\ncue: Never let your knees pass your toes", "Never let your knees pass your toes", ["no-disputed-claim"]],
    ["[exercise goblet-squat] Squat\ncue: Exhale as you stand\ncue: Breathe in as you stand", "Breathe in as you stand", ["no-contradictory-cues"]],
    ["[exercise bench-press] Press\nsets: 3 x 5 @ 60 kg\nsay: The empty bar is forty-five pounds.", "The empty bar is forty-five pounds.", ["one-unit-said"]],
  ])("%s", (script, text, rules) => {
    expect(onLine(script, text)).toEqual(rules);
  });
  it("a set too hard for whom it addresses, alone under a bar, is a matter of the catch first", () => {
    const made = episodeOf("[exercise bench-press] Press\nramp-up: 1 x 8 @ 20 kg\nsets: 3 x 5 @ 60 kg, RPE 10", { audience: { level: "beginner", groups: ["teen"] } });
    const set = made.blocks[0]?.sets[1]?.id;
    expect(checkEpisode(contextOf(made)).filter(({ line }) => line === set).map(({ rule }) => rule)).toEqual(["no-failure-alone", "no-unexplained-jargon"]);
  });
});
