import { describe, expect, it } from "vitest";
import { compile, find } from "../../../../shared/checks/language/grammar/template";
import { normalise, tokenise } from "../../../../shared/checks/language/tokens";
import { hitsOf } from "../../../../shared/checks/language/grammar/vocabulary";

function finds(template: string, text: string): boolean {
  const compiled = compile(template);
  const tokens = tokenise(normalise(text));
  return find(compiled, { tokens, hits: hitsOf(tokens) }).length > 0;
}

describe("templates", () => {
  it.each([
    ["round+", "rounded", true], ["round+", "roundabout", false], ["sag+", "sagging", true], ["collapse+", "collapsing", true], ["carry+", "carries", true],
    ["knee%", "knees", true], ["knee%", "kneel", false], ["cur*", "curious", true], ["a|b c", "b c", true], ["let your? back", "let back", true],
    ["let ~2 back", "let the lower back", true], ["let ~1 back", "let the lower back", false], ["let ~2 back", "let it, back", false], ["let ~,2 back", "let it, back", true],
    ["alone ~.3 max", "Alone? Good. Max", true], ["alone ~,3 max", "Alone? Good. Max", false], ["lower_back", "lower  back", true], ["full", "careful", false],
    ["back &3 round+", "round the back", true], ["back &3 round+", "the back may round", true], ["back &1 round+", "the back may well round", false], ["back &3 round+", "Mind the back. Round it", false],
    ["back &.3 round+", "Mind the back. Round it", true], ["fall+", "she fell", true], ["hold/v", "hold your breath", true], ["hold/v", "lose the hold", false], ["round+", "your back's rounding", true],
  ])("%s on %s is %s", (template, text, expected) => {
    expect(finds(template, text)).toBe(expected);
  });

  it("refuses a word class that does not exist", () => {
    expect(() => compile("let <nobody>")).toThrow("template: there is no word class <nobody>");
  });

  it("normalises character for character", () => {
    const text = "“Don’t” — go… İSTANBUL";
    expect(normalise(text)).toHaveLength(text.length);
    expect(normalise(text).startsWith("\"don't\"")).toBe(true);
  });
});
