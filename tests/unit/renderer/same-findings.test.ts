import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carryNames, pairUp } from "../../../renderer/session/same-findings";

const about = (rule: string, line: string | null, words: string) => ({ rule, block: "b", line, key: `${rule}|b|${line ?? ""}|${words}` });
const names = (list: readonly { name: string }[]): string[] => list.map(({ name }) => name);

describe("pairUp", () => {
  it("knows a finding by its words first, wherever it stands in the list", () => {
    expect(pairUp([about("r", "l", "one"), about("r", "l", "two")], [about("r", "l", "two"), about("r", "l", "one")])).toEqual([1, 0]);
  });

  it("takes one of the same rule at the same place for the same when its words changed", () => {
    expect(pairUp([about("r", "l", "3 x")], [about("r", "l", "3 x 8")])).toEqual([0]);
  });

  it("leaves a standing finding its own pair when a new one comes before it in the line", () => {
    expect(pairUp([about("r", "l", "old")], [about("r", "l", "new"), about("r", "l", "old")])).toEqual([null, 0]);
  });

  it("never takes other rules or lines for the same", () => {
    expect(pairUp([about("r", "l", "x"), about("s", "m", "x")], [about("r", "m", "x"), about("s", "l", "x")])).toEqual([null, null]);
  });
});

const finding = fc.tuple(fc.constantFrom("r", "s"), fc.constantFrom("l", "m", null), fc.constantFrom("a", "b", "c")).map(([rule, line, words]) => about(rule, line, words));
const list = fc.uniqueArray(finding, { selector: ({ key }) => key, maxLength: 8 });

describe("carryNames", () => {
  it("keeps the name of what stands and changes words", () => {
    const first = carryNames([], [about("r", "l", "3"), about("s", null, "")]);
    const second = carryNames(first, [about("n", "l", "new"), about("r", "l", "3 x"), about("s", null, "")]);
    expect(names(second).slice(1)).toEqual(names(first));
  });

  it("gives no two findings one name, whatever came before", () => {
    fc.assert(fc.property(fc.array(list, { minLength: 1, maxLength: 5 }), (lists) => {
      const last = lists.reduce<ReturnType<typeof carryNames<ReturnType<typeof about>>>>((named, findings) => carryNames(named, findings), []);
      expect(new Set(names(last)).size).toBe(last.length);
    }));
  });

  it("changes nothing when the list is the same", () => {
    fc.assert(fc.property(list, list, (before, after) => {
      const named = carryNames(carryNames([], before), after);
      expect(carryNames(named, after)).toEqual(named);
    }));
  });
});
