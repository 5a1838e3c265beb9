import { describe, expect, it } from "vitest";
import { suggestionWords } from "../../../../../renderer/places/speak/say-less";

describe("a suggestion in words", () => {
  const edits = [{ type: "remove-line", line: "l1" }] as const;
  it.each([
    [{ sentence: "Just sit back.", becomes: "Sit back.", edits }, 'Says "Sit back."'],
    [{ sentence: "Sit back again.", becomes: "", edits }, 'Takes out "Sit back again."'],
    [{ sentence: "Sit back.", becomes: "Sit back.", edits: [] }, 'Show "Sit back."'],
  ])("%#", (suggestion, words) => expect(suggestionWords(suggestion)).toBe(words));

  it("is cut short where the sentence is long", () => expect(suggestionWords({ sentence: "word ".repeat(60), becomes: "", edits }).length).toBeLessThan(110));
});
