import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, emptyBlock, emptyEpisode, linesOf, newLine, MAX_TEXT, type Block } from "../../../../../shared/episode";
import { emptyHalf, joinLine, oneLine, splitLine, tooLong, withBreath, withoutBreath, wordOffsets } from "../../../../../renderer/places/speak/edits";

const id = countingIds("e");
const block: Block = emptyBlock(id, "talk", { lines: [newLine(id, "say", "One two."), newLine(id, "cue", "Sit"), newLine(id, "say", "Three four.")] });
const after = (edits: Parameters<typeof applyEdits>[1]): Block => applyEdits(emptyEpisode(id, { blocks: [block] }), edits).blocks[0] ?? expect.fail();
const [first, second] = linesOf(block, "say");

describe("a say line", () => {
  it("is cut in two at the caret, the second half right behind", () => {
    const split = splitLine(block, first?.id ?? "", "One two.", 3, id) ?? expect.fail();
    expect(after(split.edits).lines.map(({ kind, text }) => `${kind}: ${text}`)).toEqual(["say: One", "say: two.", "cue: Sit", "say: Three four."]);
    expect(after(split.edits).lines[1]?.id).toBe(split.line);
  });

  it("is left whole by a cut at its edge, which begins a line of its own there", () => {
    const [one, three] = [first?.id ?? "", second?.id ?? ""];
    const places = (line: string, text: string) => Array.from({ length: text.length + 1 }, (_, at) => emptyHalf(block, line, text, at));
    expect(places(one, " Sit ")).toEqual([0, 0, null, null, 1, 1]);
    expect(places(three, "Sit")).toEqual([2, null, null, 3]);
    for (const at of [0, 1, 9]) expect(splitLine(block, one, " One two.", at, id)).toBeNull();
    expect(emptyHalf(block, "elsewhere", "Sit", 0)).toBeNull();
  });

  it("without words is not cut", () => {
    for (const text of ["", "  "]) expect([splitLine(block, first?.id ?? "", text, text.length, id), emptyHalf(block, first?.id ?? "", text, 0)]).toEqual([null, null]);
  });

  it("cut anywhere between its words loses no word and leaves no line empty", () => {
    const words = fc.array(fc.constantFrom("sit", "back,", "and", "/", "up."), { minLength: 1, maxLength: 8 }).map((list) => list.join(" "));
    fc.assert(fc.property(words, fc.nat(40), (text, n) => {
      const edited = applyEdits(emptyEpisode(id, { blocks: [block] }), [{ type: "set-line", line: first?.id ?? "", fields: { text } }]).blocks[0] ?? expect.fail();
      const at = n % (text.length + 1);
      const split = splitLine(edited, first?.id ?? "", text, at, id);
      expect(split === null).toBe(emptyHalf(edited, first?.id ?? "", text, at) !== null);
      if (split === null) return;
      const says = linesOf(applyEdits(emptyEpisode(id, { blocks: [edited] }), split.edits).blocks[0] ?? expect.fail(), "say");
      expect(says.slice(0, 2).flatMap((line) => line.text.split(" ")).filter(Boolean).join("")).toBe(text.replaceAll(" ", ""));
      for (const line of says) expect(line.text.trim()).not.toBe("");
    }));
  });

  it("is joined to the say line before it, past lines of other kinds; a block's first stays", () => {
    const joined = joinLine(block, second?.id ?? "", "Three four.");
    if (joined === null || "problem" in joined) expect.fail();
    expect(joined).toMatchObject({ line: first?.id, at: 8 });
    expect(after(joined.edits).lines.map(({ text }) => text)).toEqual(["One two. Three four.", "Sit"]);
    expect(joinLine(block, first?.id ?? "", "One two.")).toBeNull();
    expect(joinLine(block, second?.id ?? "", "x".repeat(MAX_TEXT))).toEqual({ problem: `A line holds at most ${MAX_TEXT} letters, with the one before it would have ${MAX_TEXT + 9}. The two stay apart.` });
  });

  it("holds no line breaks or control characters", () => expect(oneLine("a\r\nb\u2028c\td")).toBe("a b c d"));

  it("takes as much as a line may hold, and refuses more with a sentence instead of losing the rest", () => {
    expect(tooLong("x".repeat(MAX_TEXT))).toBeNull();
    expect(tooLong(oneLine("x".repeat(4210)))).toBe("A line holds at most 4000 letters, with this it would have 4210. Nothing was put in: take it in parts, each in a line of its own.");
  });
});

describe("a breath", () => {
  it("is marked after a word and taken out again", () => {
    expect(withBreath("Sit back and stand.", 1)).toBe("Sit back / and stand.");
    expect(withoutBreath("Sit back / and stand.", 1)).toBe("Sit back and stand.");
    expect(withoutBreath("Sit back / / and / stand.", 1)).toBe("Sit back and / stand.");
    expect(withBreath("Sit", 7)).toBe("Sit");
  });

  it("that is marked and taken out leaves the words as they were", () => {
    const words = fc.array(fc.constantFrom("sit", "back,", "3x8", "w/o", "up."), { minLength: 2, maxLength: 12 }).map((list) => list.join(" "));
    fc.assert(fc.property(words, fc.nat(10), (text, n) => {
      const word = n % (wordOffsets(text).length - 1);
      expect(withoutBreath(withBreath(text, word), word)).toBe(text);
    }));
  });
});
