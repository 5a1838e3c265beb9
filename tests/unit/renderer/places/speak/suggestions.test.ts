import { describe, expect, it } from "vitest";
import { suggestionWords } from "../../../../../renderer/places/speak/say-less";
import { withPronunciation } from "../../../../../renderer/places/speak/said-as";

describe("a suggestion in words", () => {
  const edits = [{ type: "remove-line", line: "l1" }] as const;
  it.each([
    [{ sentence: "Just sit back.", becomes: "Sit back.", edits }, 'Says "Sit back."'],
    [{ sentence: "Sit back again.", becomes: "", edits }, 'Takes out "Sit back again."'],
    [{ sentence: "Sit back.", becomes: "Sit back.", edits: [] }, 'Show "Sit back."'],
  ])("%#", (suggestion, words) => expect(suggestionWords(suggestion)).toBe(words));

  it("is cut short where the sentence is long", () => expect(suggestionWords({ sentence: "word ".repeat(60), becomes: "", edits }).length).toBeLessThan(110));
});

describe("the list of pronunciations", () => {
  const list = [{ written: "psoas", said: "so as" }, { written: "RDL", said: "R D L" }];

  it("holds one entry a word, whatever its case, and loses it when it is said as usual again", () => {
    expect(withPronunciation(list, "Psoas ", "so-az")).toEqual([{ written: "RDL", said: "R D L" }, { written: "Psoas", said: "so-az" }]);
    expect(withPronunciation(list, "rdl", null)).toEqual([{ written: "psoas", said: "so as" }]);
    expect(withPronunciation([], "x", "ex")).toEqual([{ written: "x", said: "ex" }]);
  });
});
