import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, newLine, type Block } from "../../../../../shared/episode";
import { DEFAULT_PACE } from "../../../../../shared/speech";
import { fitSentence } from "../../../../../renderer/places/speak/fit-sentence";
import { blockScreen } from "../../../../../renderer/voiceover/timeline";

const id = countingIds("s");
const fit = (clipSeconds: number | null, ...words: string[]): string => {
  const block: Block = emptyBlock(id, "talk", { clipSeconds, lines: words.map((text) => newLine(id, "say", text)) });
  return fitSentence(blockScreen(block, DEFAULT_PACE));
};

describe("fitSentence", () => {
  it("counts words to cut when they run over the clip", () => {
    expect(fit(2, "Same weight for every set, and look at the floor in front of you.")).toMatch(/^\d[\d.]* s of words over a 0:02 clip: [\d.]+ s over, cut about \d+ words\.$/);
  });

  it("says how much is free, or that nothing is set", () => {
    expect(fit(60, "Hello.")).toMatch(/ over a 1:00 clip, \d+ s free\.$/);
    expect(fit(null, "Hello.")).toMatch(/no clip length yet: the words set it/);
    expect(fit(null)).toBe("No words and no clip length yet.");
    expect(fit(20)).toBe("No words over a 0:20 clip.");
  });
});
