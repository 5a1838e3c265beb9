import { describe, expect, it } from "vitest";
import { around, hasTurn } from "../../../../shared/checks/language/grammar/scope";
import { normalise, tokenise } from "../../../../shared/checks/language/tokens";
import { hitsOf } from "../../../../shared/checks/language/grammar/vocabulary";
import type { Span } from "../../../../shared/checks/language/grammar/template";

function read(sentence: string, word: string) {
  const tokens = tokenise(normalise(sentence));
  const text = { tokens, hits: hitsOf(tokens) };
  const at = tokens.findIndex((token) => token.word === word);
  const words = ({ from, to }: Span): string => tokens.slice(from, to).map((token) => token.word).join(" ");
  return { text, at, words, parts: around(text, { from: at, to: at + 1 }) };
}

describe("what governs a word stands in its clause", () => {
  it.each([
    ["Don't round the back.", "round", "don't"],
    ["Don't rush, but round the back.", "round", ""],
    ["Don't slouch, sag or droop.", "sag", "don't slouch"],
    ["Never park it on straight, jammed knees.", "jammed", "never park it on straight"],
    ["Keep tall until it sags.", "sags", "it"],
    ["Sit tall instead of slumping.", "slumping", "sit tall instead of"],
    ["We stop here. Round the back.", "round", ""],
  ])("%s: before \"%s\" it is \"%s\"", (sentence, word, clause) => {
    const { parts, words } = read(sentence, word);
    expect(words(parts.clause)).toBe(clause);
  });

  it("knows its sentence, the one before and all that comes later", () => {
    const { parts, words } = read("Stand tall. Let it sag a bit. No, don't.", "sag");
    expect(words(parts.sentence)).toBe("let it sag a bit");
    expect(words(parts.previous)).toBe("stand tall");
    expect(words(parts.after)).toBe("a bit");
    expect(words(parts.later)).toBe("no don't");
  });

  it("tells whether a new thought opens between two places", () => {
    const turned = read("Flat back then whatever.", "flat");
    expect(hasTurn(turned.text, 2, 3)).toBe(true);
    const straight = read("Flat back on whatever.", "flat");
    expect(hasTurn(straight.text, 2, 3)).toBe(false);
  });
});
