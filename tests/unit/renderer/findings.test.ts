import { describe, expect, it } from "vitest";
import type { Finding } from "../../../shared/checks";
import { groupFindings, newStops } from "../../../renderer/findings/group";
import { countsInWords, gravest, openCounts, placeOf } from "../../../renderer/words/open-counts";

const finding = (key: string, fields: Partial<Finding> = {}): Finding => ({
  key, rule: key, ruleVersion: 1, level: "fix", moment: "before filming", message: `${key}.`, why: "", source: { title: "from memory" },
  block: null, line: null, range: null, words: "", remedies: [], waiver: null, ...fields,
});
const waiver = { id: "w", rule: "a", ruleVersion: 1, block: null, line: null, text: "", reason: "agreed" };
const stop = { level: "stop" } as const;

describe("groupFindings", () => {
  const all = [finding("late", { moment: "before publishing" }), finding("b"), finding("grave", stop), finding("a"), finding("gone", { waiver })];
  const groups = groupFindings(all);

  it("keeps moments in the order of the work and leaves empty ones out", () => {
    expect(groups.moments.map((group) => group.heading)).toEqual(["Before you film", "Before you publish"]);
  });

  it("puts stops first and leaves the rest in order", () => {
    expect(groups.moments[0]?.findings.map((one) => one.key)).toEqual(["grave", "b", "a"]);
  });

  it("counts by level what is open, the waived ones left out", () => {
    expect(groups.moments[0]?.counts).toEqual({ stop: 1, fix: 2, consider: 0 });
  });

  it("counts what is held back as well", () => {
    const few = groupFindings(all, new Set(all.filter(({ key }) => key === "grave")));
    expect(few.moments.map(({ findings, counts }) => [findings.length, counts.fix])).toEqual([[1, 2]]);
  });
});

describe("newStops", () => {
  it("tells only stops that are new and stand", () => {
    expect(newStops([finding("old", stop)], [finding("old", stop), finding("new", stop), finding("fix"), finding("waived", { ...stop, waiver })])).toEqual(["new."]);
  });

  it("does not tell a stop again whose words were merely changed", () => {
    const at = { ...stop, rule: "r", block: "b", line: "l" };
    expect(newStops([finding("r|b|l|arch", at)], [finding("r|b|l|arch hard", at)])).toEqual([]);
  });

  it("does not tell a stop that was brought back from those set aside", () => {
    expect(newStops([finding("a", { ...stop, waiver })], [finding("a", stop)])).toEqual([]);
  });
});

describe("counts per place", () => {
  it("counts each finding at the one place it concerns", () => {
    expect([
      placeOf({ rule: "warm-up", moment: "before filming" }), placeOf({ rule: "min-rest", moment: "before filming" }), placeOf({ rule: "mirrors", moment: "before filming" }),
      placeOf({ rule: "no-unsafe-cue", moment: "before filming" }), placeOf({ rule: "no-unsafe-cue", moment: "before speaking" }), placeOf({ rule: "title", moment: "before publishing" }),
    ]).toEqual(["write", "train", "shoot", "write", "speak", "publish"]);
  });

  it("counts open findings only, by level", () => {
    const counts = openCounts([finding("min-rest"), finding("min-rest", stop), finding("min-rest", { waiver })]);
    expect(counts.train).toEqual({ stop: 1, fix: 1, consider: 0 });
    expect(gravest(counts.train)).toEqual({ level: "stop", count: 1, more: 1 });
    expect(gravest(counts.write)).toBeNull();
  });

  it("says counts in words, gravest first, without what there is none of", () => {
    expect(countsInWords({ stop: 1, fix: 0, consider: 7 })).toBe("1 stop, 7 consider");
  });
});
