import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { actionable, checkEpisode, findingSentence, LEVELS, MOMENTS, openFindings, RULES, waiverFor } from "../../../shared/checks";
import { defineBlockRule, defineRule } from "../../../shared/checks/define-rule";
import { applyEdits, BLOCK_KINDS, countingIds, demoEpisode, emptyBlock, emptyEpisode, LINE_KINDS, newLine, type Episode } from "../../../shared/episode";
import { EXERCISES } from "../../../shared/exercises";
import { contextOf, deepFreeze, episodeOf } from "./rule-test";

const check = (episode: Episode) => checkEpisode(contextOf(episode));

describe("the demo episode", () => {
  const context = contextOf(deepFreeze(demoEpisode));
  const findings = checkEpisode(context);

  it("has nothing that stops, and exactly the findings it is meant to show", () => {
    expect(findings.map(({ rule }) => rule)).toEqual(["closing-shot", "words-over-clip", "no-unexplained-jargon"]);
    expect(findings.filter(({ level }) => level === "stop")).toEqual([]);
  });

  it("has too many words over the goblet squat", () => {
    const found = findings.filter(({ rule }) => rule === "words-over-clip");
    expect(found.map(({ message }) => message)).toEqual([expect.stringMatching(/^Goblet squat: \d+ s of words over a 17 s clip\. Cut about \d+ words\.$/)]);
  });

  it("is left with fewer findings by every remedy it offers", () => {
    for (const finding of findings) {
      for (const { edits } of finding.remedies) expect(check(applyEdits(demoEpisode, edits)).length).toBeLessThan(findings.length);
    }
  });
});

describe("order", () => {
  it("is moment, then level, then place in the running order", () => {
    const findings = check(episodeOf(`
      [exercise biceps-curl] Curl
      say: Push through the pain.
      [exercise bench-press] Bench press
      cue: Bounce the bar off your chest
      sets: 3 x 5 @ 60 kg, RPE 9.5`));
    const grades = findings.map(({ moment, level }) => MOMENTS.indexOf(moment) * 10 + LEVELS.indexOf(level));
    expect(grades).toEqual([...grades].sort((a, b) => a - b));
    expect(findings[0]?.rule).toBe("no-failure-alone");
    expect(findings.filter(({ rule }) => rule === "no-unsafe-cue").map(({ words }) => words)).toEqual(["Bounce the bar off your chest", "Push through the pain"]);
  });

  it("gives every finding a key of its own that stays the same", () => {
    const episode = episodeOf(`[exercise goblet-squat] Squat
      say: Four sets, four sets.
      sets: 3 x 10`);
    const keys = check(episode).map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(check(episode).map(({ key }) => key)).toEqual(keys);
  });
});

describe("waivers", () => {
  const episode = episodeOf(`[exercise bench-press] Bench press
    cue: Bounce the bar off your chest`);
  const unsafe = check(episode).find(({ rule }) => rule === "no-unsafe-cue");
  const waived = (): Episode => ({ ...episode, waivers: unsafe ? [waiverFor(unsafe, "w1", "A quote we discuss in the video")] : [] });

  it("leave the finding listed, with the reason, and out of the open ones", () => {
    const found = check(waived()).find(({ rule }) => rule === "no-unsafe-cue");
    expect(found?.level).toBe("stop");
    expect(found?.waiver?.reason).toBe("A quote we discuss in the video");
    expect(openFindings(check(waived())).some(({ rule }) => rule === "no-unsafe-cue")).toBe(false);
    expect(found && findingSentence(found)).toContain("Set aside: A quote we discuss in the video");
  });

  it("ask again when the words change", () => {
    const line = episode.blocks[0]?.lines[0]?.id ?? "";
    const changed = applyEdits(waived(), [{ type: "set-line", line, fields: { text: "Bounce it off your ribs" } }]);
    expect(check(changed).find(({ rule }) => rule === "no-unsafe-cue")?.waiver).toBeNull();
  });

  it("ask again when the rule has a newer version", () => {
    const old = { ...waived(), waivers: waived().waivers.map((waiver) => ({ ...waiver, ruleVersion: 99 })) };
    expect(check(old).find(({ rule }) => rule === "no-unsafe-cue")?.waiver).toBeNull();
  });
});

describe("rules that look at one block at a time", () => {
  it("do not look again at a block that did not change", () => {
    let looks = 0;
    const counting = defineBlockRule({
      meta: { id: "counting", version: 1, subject: "words", level: "consider", moment: "before filming", summary: "s", why: "w", source: { title: "t" }, messages: { hit: "Hit." } },
      check: () => { looks++; },
    });
    const episode = episodeOf("[talk] One\nsay: a\n[talk] Two\nsay: b");
    const newId = countingIds("n");
    checkEpisode(contextOf(episode, newId), [counting]);
    checkEpisode(contextOf(episode, newId), [counting]);
    expect(looks).toBe(2);
    const line = episode.blocks[0]?.lines[0]?.id ?? "";
    const edited = applyEdits(episode, [{ type: "set-line", line, fields: { text: "c" } }]);
    checkEpisode(contextOf(edited, newId), [counting]);
    expect(looks).toBe(3);
    checkEpisode(contextOf({ ...edited, audience: { level: "advanced", groups: [] } }, newId), [counting]);
    expect(looks).toBe(5);
  });

  it("say which scope they have", () => {
    const whole = defineRule({ meta: { id: "whole", version: 1, subject: "film", level: "fix", moment: "before filming", summary: "s", why: "w", source: { title: "t" }, messages: { hit: "Hit." } }, check: () => undefined });
    expect(whole.scope).toBe("episode");
    expect(RULES.filter(({ scope }) => scope === "block").length).toBeGreaterThan(10);
  });
});

describe("any episode", () => {
  const text = fc.constantFrom("", "3 x 8-10 @ 40 kg, rest 90 s, RIR 2", "3 x", "Side, full, set 2, 12 s: all", "Push through the pain", "Elbows in", "elbows out", "Four sets of twelve", "?!", "1RM İ 🏋️", "Ad: Fernhill Oats");
  const id = countingIds("p");
  const block = fc.record({
    kind: fc.constantFrom(...BLOCK_KINDS), title: text, exercise: fc.option(fc.constantFrom("gone-from-catalogue", ...EXERCISES.map((each) => each.id)), { nil: null }),
    clip: fc.option(fc.integer({ min: 0, max: 90 }), { nil: null }), sets: fc.array(text, { maxLength: 3 }), lines: fc.array(fc.tuple(fc.constantFrom(...LINE_KINDS), text), { maxLength: 6 }),
  }).map(({ kind, title, exercise, clip, sets, lines }) => emptyBlock(id, kind, {
    title, exercise, clipSeconds: clip, sets: sets.map((each) => ({ id: id(), role: "working" as const, text: each })), lines: lines.map(([lineKind, each]) => newLine(id, lineKind, each)),
  }));

  it("can be checked: no throw, frozen input, the same answer twice, ranges inside the text", () => {
    fc.assert(fc.property(fc.array(block, { maxLength: 8 }), (blocks) => {
      const episode = deepFreeze(emptyEpisode(id, { blocks, partners: [{ id: "q", name: "Fernhill Oats", relation: "paid", disclosure: "" }] }));
      const findings = check(episode);
      expect(check(episode).map(({ key }) => key)).toEqual(findings.map(({ key }) => key));
      for (const finding of findings) expect(finding.message).not.toMatch(/\{\w+\}|undefined|NaN/);
    }), { numRuns: 40 });
  });
});

describe("what a series leaves out", () => {
  const script = "[opening] Opening\nshot: Front, medium, 10 s: to camera\n[exercise leg-press] Leg press";
  const rulesWith = (quiet: string[]): string[] => check(episodeOf(script, { series: { name: "", number: null, coach: "", quiet } })).map(({ rule }) => rule);

  it("is not listed when it is a thing to consider", () => {
    expect(rulesWith([])).toContain("alternate");
    expect(rulesWith(["alternate"])).not.toContain("alternate");
  });
  it("is listed all the same when it is graver", () => {
    expect(rulesWith(["closing"])).toContain("closing");
  });
});

describe("what a person can act on", () => {
  const found = [
    ...Array.from({ length: 4 }, (_, i) => ({ block: "a", level: "consider" as const, i })),
    ...Array.from({ length: 7 }, (_, i) => ({ block: "a", level: "stop" as const, i })),
    { block: "b", level: "fix" as const, i: 0 }, { block: null, level: "consider" as const, i: 0 },
  ];

  it("shows every stop, keeps the order, and holds back the least grave of a block", () => {
    const { shown, heldBack } = actionable(found, 5);
    expect(shown.filter(({ level }) => level === "stop")).toHaveLength(7);
    expect(shown.map(({ block, level }) => `${block} ${level}`).slice(-2)).toEqual(["b fix", "null consider"]);
    expect([...heldBack]).toEqual([["a", 4]]);
  });
  it("holds nothing back when there is little", () => {
    expect(actionable(found.slice(0, 3)).heldBack.size).toBe(0);
  });
});
