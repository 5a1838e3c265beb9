import { describe, expect, it } from "vitest";
import { parseSetLine } from "../../../../shared/training";
import cases from "../set-line.blind.cases.json";

/** Lines written and labelled from the rules of the shorthand, not from the parser. */
describe("reading set lines the parser was not written for", () => {
  it.each(cases.filter((one) => one.expect !== null))("reads $text", ({ text, expect: wanted }) => {
    expect(parseSetLine(text)).toEqual({ ok: true, scheme: wanted });
  });

  it.each(cases.filter((one) => one.expect === null))("refuses $text and says why", ({ text }) => {
    const parsed = parseSetLine(text);
    expect(parsed).toMatchObject({ ok: false });
    if (!parsed.ok) expect(parsed.error).toMatch(/^\S.{8,}/);
  });

  it("holds each line once, and enough that must be refused", () => {
    expect(new Set(cases.map((one) => one.text)).size).toBe(cases.length);
    expect(cases.filter((one) => one.expect === null).length).toBeGreaterThan(150);
  });
});
