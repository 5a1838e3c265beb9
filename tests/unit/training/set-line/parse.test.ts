import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseSetLine, printSetLine } from "../../../../shared/training";
import { anyScheme } from "../scheme-arbitrary";
import { SET_LINE_CASES } from "../set-line.cases";
import dev from "../set-lines.dev.json";

const schemeOf = (text: string): unknown => {
  const parsed = parseSetLine(text);
  return parsed.ok ? parsed.scheme : null;
};

describe("reading set lines", () => {
  it.each(dev)("reads the labelled line $id: $text", ({ text, expect: wanted }) => {
    expect(schemeOf(text)).toEqual(wanted);
  });

  it.each(SET_LINE_CASES.filter(([, scheme]) => scheme !== null))("reads %j", (text, scheme) => {
    expect(schemeOf(text)).toEqual(scheme);
  });

  it.each(SET_LINE_CASES.filter(([, scheme]) => scheme === null))("refuses %j", (text) => {
    const parsed = parseSetLine(text);
    expect(parsed).toMatchObject({ ok: false });
    if (parsed.ok) return;
    expect(parsed.error).toMatch(/^\S.{8,}/);
    expect(parsed.at).toBeGreaterThanOrEqual(0);
    expect(parsed.at + parsed.length).toBeLessThanOrEqual(text.length);
  });

  it("keeps the table of cases large and free of repeats", () => {
    const texts = SET_LINE_CASES.map(([text]) => text);
    expect(new Set(texts).size).toBe(texts.length);
    expect(texts.length).toBeGreaterThan(500);
  });

  it.each([
    ["4 x , 60kg", "Rep count missing after \"4 x\"", "4 x"],
    ["3 x 10-6 reps", "The rep range runs backwards: 10 to 6", "10-6"],
    ["2.5x10", "The number of sets is whole, not 2.5", "2.5x"],
    ["3x8 @ kg", "Number missing before \"kg\"", "kg"],
    ["3x8, rest -30s", "A rest cannot be negative", "rest -30"],
    ["10/8/x/4", "Rung 3 of the ladder is not a number", "x"],
    ["EMOM: five reps", "An EMOM needs its minutes, such as EMOM 10 min", "EMOM: five reps"],
    ["3x8 @ 60", "\"60\" is not understood here", "60"],
    ["3x8 @", "Something is missing after \"@\"", "@"],
    ["3x8, 60 kg, 70 kg", "Two loads in one line: keep one", "70 kg"],
    ["3x8 RPE 8, RIR 4", "RPE 8 and 4 reps in reserve disagree", "3x8 RPE 8, RIR 4"],
    ["3x8, rest 1:75", "Clock seconds go up to 59, not 75", "1:75"],
  ])("says what is wrong with %j and where", (text, error, blamed) => {
    const parsed = parseSetLine(text);
    expect(parsed.ok ? parsed : { ...parsed, blamed: text.slice(parsed.at, parsed.at + parsed.length) }).toMatchObject({ ok: false, error, blamed });
  });

  it("gives back any scheme it can print", () => {
    fc.assert(fc.property(anyScheme, (scheme) => {
      expect(parseSetLine(printSetLine(scheme))).toEqual({ ok: true, scheme });
    }), { numRuns: 1500 });
  });

  it("prints every line it reads so that the print reads the same", () => {
    for (const [text, scheme] of SET_LINE_CASES) if (scheme) expect([text, schemeOf(printSetLine(scheme))]).toEqual([text, scheme]);
  });

  it("reads capitals, spaces at the ends and other dashes the same", () => {
    for (const [text, scheme] of SET_LINE_CASES.filter(([, one]) => one !== null)) {
      expect([text, schemeOf(`  ${text.toUpperCase()} `)]).toEqual([text, scheme]);
      expect([text, schemeOf(text.replace(/-(?=\d)/g, "–"))]).toEqual([text, scheme]);
    }
  });

  it("never throws and always points inside the text", () => {
    const words = fc.constantFrom("3", "x", "8", "-", "10", "/", "@", "kg", "rest", "tempo", "3110", "s", "min", "RPE", "EMOM", "AMRAP", "last set", "each", "side", "BW", "+", "band", ":", "1:30", "'", "½", "to", "of", "sets", "ladder", "drop", "pause", "hold", "a", "in", "the tank", "%", "(", "X", ",");
    const text = fc.oneof(fc.string(), fc.string({ unit: "grapheme" }), fc.array(words, { maxLength: 12 }).chain((list) => fc.constantFrom(list.join(""), list.join(" "))));
    fc.assert(fc.property(text, (line) => {
      const parsed = parseSetLine(line);
      if (parsed.ok) return;
      expect(parsed.at).toBeGreaterThanOrEqual(0);
      expect(parsed.length).toBeGreaterThanOrEqual(0);
      expect(parsed.at + parsed.length).toBeLessThanOrEqual(line.length);
    }), { numRuns: 3000 });
  });

  it("refuses a line that is followed by a word it does not know", () => {
    for (const [text, scheme] of SET_LINE_CASES) if (scheme) expect([text, schemeOf(`${text} qqq`)]).toEqual([text, null]);
  });

  it("reads a very long line without effort and refuses it", () => {
    expect(parseSetLine("3x8 ".repeat(1000))).toEqual({ ok: false, error: "A set line has at most 300 characters", at: 300, length: 3700 });
  });
});
