import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wrap, type Styled } from "../../../../shared/exports/paper/text";

/** Ten points a character, so that widths can be counted by eye. */
const measure = (text: string): number => Array.from(new Intl.Segmenter("en").segment(text)).length * 10;
const one = (text: string): Styled<string>[] => [{ text, style: "plain" }];
const shown = (runs: readonly Styled<string>[], width: number): string[] => wrap(runs, width, measure).map((line) => line.segments.map((segment) => segment.text).join(""));

describe("wrapping text", () => {
  it.each([
    ["breaks at spaces", "drive the elbows back", 110, ["drive the", "elbows back"]],
    ["fills a line to its last point", "drive back", 100, ["drive back"]],
    ["makes many spaces one and drops them at the ends", "  drive   the  ", 100, ["drive the"]],
    ["cuts a long word after its hyphens first", "half-kneeling landmine", 90, ["half-", "kneeling", "landmine"]],
    ["keeps a range of figures whole", "do 8-10 reps", 60, ["do", "8-10", "reps"]],
    ["cuts a word without hyphens between characters", "Donaudampfschiff", 60, ["Donaud", "ampfsc", "hiff"]],
    ["goes on after a cut word on the same line", "Donaudampf is", 60, ["Donaud", "ampf", "is"]],
    ["never parts a letter from its accent", "e\u0301e\u0301e\u0301", 20, ["e\u0301e\u0301", "e\u0301"]],
    ["keeps words joined by a no-break space together", "press 22\u00a0kg now", 90, ["press", "22\u00a0kg now"]],
    ["gives no line for no text", "   ", 60, []],
    ["lets a character wider than the column stand alone", "abc", 4, ["a", "b", "c"]],
  ])("%s", (_name, text, width, expected) => {
    expect(shown(one(text), width)).toEqual(expected);
  });

  it("does not break where only the style changes", () => {
    const runs = [{ text: "take 22", style: "bold" }, { text: "kg up", style: "plain" }];
    expect(shown(runs, 80)).toEqual(["take", "22kg up"]);
  });

  it("says which lines ended at a space, so that readers do not glue words", () => {
    expect(shown(one("drive the Donaudampf"), 60)).toEqual(["drive", "the Do", "naudam", "pf"]);
    expect(wrap(one("drive the Donaudampf"), 60, measure).map((line) => line.spaceAfter)).toEqual([true, false, false, false]);
  });

  const anyText = fc.array(fc.oneof(fc.string({ unit: "grapheme", maxLength: 14 }), fc.constantFrom(" ", "-", "half-kneeling", "and/or", "ł")), { maxLength: 24 }).map((parts) => parts.join(" "));
  const widths = fc.integer({ min: 10, max: 300 });

  it("makes no line wider than the column", () => {
    fc.assert(fc.property(anyText, widths, (text, width) => {
      for (const line of wrap(one(text), width, measure)) expect(line.width).toBeLessThanOrEqual(width + 1e-6);
    }));
  });

  it("loses no character and changes no order, whatever the styles", () => {
    fc.assert(fc.property(fc.array(fc.record({ text: anyText, style: fc.constantFrom("a", "b") }), { maxLength: 4 }), widths, (runs, width) => {
      const bare = (text: string) => text.replace(/[ \t\n\u1680\u2000-\u2006\u2008-\u200a\u205f\u3000]/g, "");
      expect(bare(shown(runs, width).join(""))).toBe(bare(runs.map((run) => run.text).join("")));
    }));
  });

  it("puts segments end to end from the left edge", () => {
    fc.assert(fc.property(fc.array(fc.record({ text: anyText, style: fc.constantFrom("a", "b") }), { maxLength: 4 }), widths, (runs, width) => {
      for (const line of wrap(runs, width, measure)) {
        let x = 0;
        for (const segment of line.segments) {
          expect(segment.x).toBeCloseTo(x, 6);
          x += segment.width;
        }
      }
    }));
  });

  it("never leaves a line that the next word would have fitted on", () => {
    fc.assert(fc.property(fc.array(fc.stringMatching(/^[a-z]{1,8}$/), { minLength: 1, maxLength: 30 }), fc.integer({ min: 80, max: 300 }), (words, width) => {
      const out = shown(one(words.join(" ")), width);
      out.slice(0, -1).forEach((line, i) => {
        const next = (out[i + 1] ?? "").split(" ")[0] ?? "";
        expect((line.length + 1 + next.length) * 10).toBeGreaterThan(width);
      });
    }));
  });
});
