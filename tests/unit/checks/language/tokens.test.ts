import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BREAK, normalise, tokenise } from "../../../../shared/checks/language/tokens";

const tokens = (text: string) => tokenise(normalise(text));

describe("words of a text", () => {
  it("keeps contractions whole, splits at hyphens, and knows the place of each word", () => {
    const text = "Don’t lock-out: it’s \u201cfine\u201d.";
    expect(tokens(text).map(({ word, start, end }) => [word, text.slice(start, end)])).toEqual([
      ["don't", "Don’t"], ["lock", "lock"], ["out", "out"], ["it's", "it’s"], ["fine", "fine"],
    ]);
  });

  it.each([["the knees fell in", 2, "fall"], ["you held it", 1, "hold"], ["sagging hips", 0, "sag"]])("lemma in %s", (text, at, lemma) => {
    expect(tokens(text)[at]?.lemma).toBe(lemma);
  });

  it.each([
    ["knees in. Push", BREAK.sentence], ["knees in, push", BREAK.comma], ["knees in; push", BREAK.colon], ["knees in - push", BREAK.comma],
    ["knees in \u2014 push", BREAK.comma], ["knees in push", BREAK.none], ["knees in-push", BREAK.none], ["knees in\npush", BREAK.sentence], ["knees in? push", BREAK.sentence],
  ])("the break before the last word of %s", (text, gap) => {
    expect(tokens(text).at(-1)?.gap).toBe(gap);
  });

  it("knows what stands between quotes, double or single, and that an apostrophe is none", () => {
    const quoted = (text: string) => tokens(text).filter((token) => token.quoted).map(({ word }) => word);
    expect(quoted("He said \"bounce it\" and left.")).toEqual(["bounce", "it"]);
    expect(quoted("'Bounce it,' he said.")).toEqual(["bounce", "it"]);
    expect(quoted("Don't lean on the lads' bar, hold 'em up.")).toEqual([]);
  });

  it("covers any text without leaving it", () => {
    fc.assert(fc.property(fc.string(), (text) => {
      let last = 0;
      for (const { start, end } of tokens(text)) {
        expect(start >= last && end > start && end <= text.length).toBe(true);
        last = end;
      }
    }));
  });
});
