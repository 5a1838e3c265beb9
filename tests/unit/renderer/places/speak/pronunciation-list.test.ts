import { describe, expect, it } from "vitest";
import { countingIds, emptyEpisode, episodeSchema } from "../../../../../shared/episode";
import { listIsFull, MOST_WORDS, withPronunciation } from "../../../../../renderer/places/speak/pronunciation-list";

const words = (n: number) => Array.from({ length: n }, (_, i) => ({ written: `word ${i}`, said: "w" }));

describe("the list of pronunciations", () => {
  const list = [{ written: "psoas", said: "so as" }, { written: "RDL", said: "R D L" }];

  it("holds one entry a word, whatever its case, in its place, and loses it when it is said as usual again", () => {
    expect(withPronunciation(list, "Psoas ", "so-az")).toEqual([{ written: "Psoas", said: "so-az" }, { written: "RDL", said: "R D L" }]);
    expect(withPronunciation(list, "rdl", null)).toEqual([{ written: "psoas", said: "so as" }]);
    expect(withPronunciation([], "x", "ex")).toEqual([{ written: "x", said: "ex" }]);
  });

  it("is as long as the document takes, and says so before a word too many", () => {
    const episode = emptyEpisode(countingIds("p"));
    const takes = (n: number): boolean => episodeSchema.safeParse({ ...episode, series: { ...episode.series, pronunciations: words(n) } }).success;
    expect([takes(MOST_WORDS), takes(MOST_WORDS + 1)]).toEqual([true, false]);
    expect(listIsFull(words(MOST_WORDS - 1), "psoas")).toBeNull();
    expect(listIsFull(words(MOST_WORDS), "psoas")).toBe("Your pronunciations are full at 300 words. Take one out first.");
    expect(listIsFull(words(MOST_WORDS), "Word 7")).toBeNull();
  });
});
