import { describe, expect, it } from "vitest";
import type { Finding } from "../../../shared/checks";
import { groupFindings, listKeys, newStops } from "../../../renderer/findings/group";

const finding = (key: string, fields: Partial<Finding> = {}): Finding => ({
  key, rule: key, ruleVersion: 1, level: "fix", moment: "before filming", message: `${key}.`, why: "", source: { title: "from memory" },
  block: null, line: null, range: null, words: "", remedies: [], waiver: null, ...fields,
});
const waiver = { id: "w", rule: "a", ruleVersion: 1, block: null, line: null, text: "", reason: "agreed" };

describe("groupFindings", () => {
  const groups = groupFindings([
    finding("late", { moment: "before publishing" }), finding("b"), finding("grave", { level: "stop" }), finding("a"), finding("gone", { waiver }),
  ]);

  it("keeps moments in the order of the work and leaves empty ones out", () => {
    expect(groups.moments.map((group) => group.heading)).toEqual(["Before you film", "Before you publish"]);
  });

  it("puts stops first and leaves the rest in order", () => {
    expect(groups.moments[0]?.findings.map((one) => one.key)).toEqual(["grave", "b", "a"]);
  });

  it("counts and lists waived findings apart", () => {
    expect(groups.open).toBe(4);
    expect(groups.waived.map((one) => one.key)).toEqual(["gone"]);
  });
});

it("gives equal findings different list keys", () => {
  expect(listKeys([finding("a"), finding("b"), finding("a")])).toEqual(["a", "b", "a 2"]);
});

it("tells only stops that are new and stand", () => {
  const stop = { level: "stop" } as const;
  expect(newStops(new Set(["old"]), [finding("old", stop), finding("new", stop), finding("fix"), finding("waived", { ...stop, waiver })])).toEqual(["new."]);
});
