import { describe, expect, it } from "vitest";
import { CUE_LABELS, LEVELS, RULES, SUBJECTS } from "../../../shared/checks";
import { ruleBook, soughtWords } from "../../../renderer/rule-book/book";

const idsOf = (typed: string, quiet: string[] = []): string[] => ruleBook(RULES, typed, quiet).flatMap(({ entries }) => entries.map(({ meta }) => meta.id));

describe("ruleBook", () => {
  it("holds every rule once, by subject, the gravest first", () => {
    const book = ruleBook(RULES, "", []);
    expect(book.map(({ subject }) => subject)).toEqual(SUBJECTS);
    expect(idsOf("").sort()).toEqual(RULES.map(({ meta }) => meta.id).sort());
    for (const { entries } of book) {
      const levels = entries.map(({ meta }) => LEVELS.indexOf(meta.level));
      expect(levels).toEqual([...levels].sort((a, b) => a - b));
    }
  });

  it("finds rules that hold every word typed, in any order and any case", () => {
    expect(idsOf("WARM-UP first")).toContain("warm-up-first");
    expect(idsOf("first warm-up")).toEqual(idsOf("WARM-UP  first "));
    expect(idsOf("warm-up first").length).toBeLessThan(idsOf("warm-up").length);
    expect(idsOf("no rule says this")).toEqual([]);
  });

  it("finds levels, moments, sources and what the language reader looks for", () => {
    expect(idsOf("stop").length).toBeGreaterThanOrEqual(RULES.filter(({ meta }) => meta.level === "stop").length);
    expect(idsOf("before publishing")).toContain("title");
    expect(idsOf("knee tracking")).toEqual(["no-unsafe-cue"]);
  });

  it("says when only the reason holds the words, so that it can be shown", () => {
    const entry = (typed: string) => ruleBook(RULES, typed, []).flatMap(({ entries }) => entries).find(({ meta }) => meta.id === "no-unsafe-cue");
    expect(entry("bounces")?.isMatchInside).toBe(true);
    expect(entry("hurt")?.isMatchInside).toBe(false);
  });

  it("knows what the series leaves out, and finds it by that", () => {
    const [left] = RULES.filter(({ meta }) => meta.level === "consider");
    const id = left?.meta.id ?? "";
    expect(ruleBook(RULES, "", [id]).flatMap(({ entries }) => entries.filter(({ isLeftOut }) => isLeftOut).map(({ meta }) => meta.id))).toEqual([id]);
    expect(idsOf("left out", [id])).toContain(id);
  });
});

describe("soughtWords", () => {
  it("lists every label of the language reader under a rule that uses it, with what such words do", () => {
    const sought = RULES.flatMap(({ meta }) => soughtWords(meta));
    expect(sought.map(({ name }) => name).sort()).toEqual(CUE_LABELS.map((label) => label.replaceAll("-", " ")).sort());
    for (const { name, does } of sought) expect(does, name).toMatch(/^[a-z][^{}"]{4,}[a-z]$/);
  });
});
