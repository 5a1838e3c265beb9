import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Finding } from "../../../shared/checks";
import { calmed, createCalm } from "../../../renderer/session/calm";

const finding = (words: string, fields: Partial<Finding> = {}): Finding => ({
  rule: "r", ruleVersion: 1, level: "fix", moment: "before filming", message: words, why: "", source: { title: "from memory" },
  block: "b", line: "l", range: null, words, remedies: [], waiver: null, ...fields, key: [fields.rule ?? "r", fields.block ?? "b", fields.line ?? "l", words].join("|"),
});
const typing = { block: "b", line: "l" };
const words = (list: readonly Finding[]): string[] => list.map((each) => each.words);

describe("calmed", () => {
  it("holds back what is new about the line being typed", () => {
    expect(calmed([], [finding("3 x")], typing)).toEqual([]);
  });

  it("goes on showing what stands, in its newest words", () => {
    expect(words(calmed([finding("3 x")], [finding("3 x 8 @")], typing))).toEqual(["3 x 8 @"]);
  });

  it("takes away what is mended, at once", () => {
    expect(calmed([finding("3 x")], [], typing)).toEqual([]);
  });

  it("holds nothing back about other lines and other blocks", () => {
    const other = [finding("a", { line: "m" }), finding("b", { block: "c", line: null }), finding("c", { block: null, line: null })];
    expect(calmed([], other, typing)).toBe(other);
  });

  it("holds back what is new about the whole block, and while its name is typed about all of its lines", () => {
    expect(calmed([], [finding("no cue", { line: null })], typing)).toEqual([]);
    expect(calmed([], [finding("3 x", { line: "m" })], { block: "b", line: null })).toEqual([]);
  });

  it("never hides a standing finding behind a new one of the same rule in the same line", () => {
    expect(words(calmed([finding("old")], [finding("new"), finding("old")], typing))).toEqual(["old"]);
  });
});

describe("createCalm", () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it("tells what it held back when the typing has rested, and only then", () => {
    const show = vi.fn();
    const calm = createCalm(show, 1000);
    calm.typed(typing);
    const list = [finding("3 x")];
    expect(calm.found(list)).toEqual([]);
    vi.advanceTimersByTime(800);
    calm.typed(typing);
    vi.advanceTimersByTime(800);
    expect(show).not.toHaveBeenCalled();
    vi.advanceTimersByTime(200);
    expect(show).toHaveBeenCalledExactlyOnceWith(list);
  });

  it("tells it at once when the caret leaves the line", () => {
    const show = vi.fn();
    const calm = createCalm(show);
    calm.typed(typing);
    calm.found([finding("3 x")]);
    expect(calm.isTyping(typing)).toBe(true);
    calm.rest();
    expect(show).toHaveBeenCalledOnce();
    expect(calm.isTyping(typing)).toBe(false);
  });

  it("tells nothing twice when nothing was held back", () => {
    const show = vi.fn();
    const calm = createCalm(show);
    calm.found([finding("3 x")]);
    calm.typed(typing);
    calm.found([finding("3 x 8")]);
    vi.advanceTimersByTime(5000);
    expect(show).not.toHaveBeenCalled();
  });
});
