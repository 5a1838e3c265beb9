import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock } from "../../../../shared/episode";
import { chapterNotes, chapterProblems, chaptersOf, chapterText, chapterTime } from "../../../../shared/exports/publish";
import { screenClock } from "../../../../shared/speech";

const id = countingIds("c");
const block = (title: string, clipSeconds: number) => emptyBlock(id, "exercise", { title, clipSeconds });
const chapters = (...blocks: [string, number][]) => {
  const episode = { ...demoEpisode, blocks: blocks.map(([title, length]) => block(title, length)) };
  return chaptersOf(episode, screenClock(episode, () => 0));
};

describe("chaptersOf", () => {
  it("begins a chapter at each block", () => {
    expect(chapters(["Opening", 30], ["Squat", 90.4], ["Closing", 20])).toEqual([{ at: 0, title: "Opening" }, { at: 30, title: "Squat" }, { at: 120, title: "Closing" }]);
  });

  it("gives a short block to the one before it", () => {
    expect(chapters(["Opening", 30], ["Talk", 6], ["Squat", 90])).toEqual([{ at: 0, title: "Opening" }, { at: 36, title: "Squat" }]);
  });

  it("gives a short beginning to the next block, which then begins at 0:00", () => {
    expect(chapters(["Title", 4], ["Hello", 3], ["Opening", 30], ["Squat", 90])).toEqual([{ at: 0, title: "Opening" }, { at: 37, title: "Squat" }]);
  });

  it("is empty for an episode without screen time", () => {
    expect(chapters(["Opening", 0])).toEqual([]);
  });

  it("makes a list that breaks no rule but the count, whatever the blocks", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 30 }), (lengths) => {
        const list = chapters(...lengths.map((length, i): [string, number] => [`Block ${i}`, length]));
        const total = Math.round(lengths.reduce((sum, length) => sum + length, 0));
        expect(chapterProblems(list, total).filter((problem) => !problem.includes("at least 3"))).toEqual([]);
      }),
    );
  });
});

describe("chapterProblems", () => {
  it("names each in one sentence", () => {
    expect(chapterProblems([{ at: 5, title: "A" }, { at: 65, title: "B" }, { at: 60, title: "C" }], 65)).toEqual([
      "The first chapter begins at 0:05, not at 0:00.",
      '"B" at 1:05 comes after what follows it: chapters go forward in time.',
      '"C" at 1:00 lasts 5 s; a chapter needs 10 s or more.',
    ]);
    expect(chapterProblems([], 600)[0]).toMatch(/^No chapters, at least 3 are needed/);
    expect(chapterProblems([{ at: 0, title: "A" }], 600)[0]).toMatch(/^One chapter, at least 3/);
  });
});

it("notes titles that are cut off", () => {
  expect(chapterNotes([{ at: 0, title: "a".repeat(50) }, { at: 20, title: "b".repeat(51) }])).toEqual([`"${"b".repeat(51)}" has 51 characters; beyond 50 it may be cut off.`]);
});

it("writes one chapter a line, time then title", () => {
  expect(chapterText([{ at: 0, title: "Opening" }, { at: 34, title: "Warm-up" }])).toBe("0:00 Opening\n0:34 Warm-up");
});

it.each([[0, "0:00"], [9, "0:09"], [3599, "59:59"], [3600, "1:00:00"]])("writes second %i as %s", (at, text) => {
  expect(chapterTime(at)).toBe(text);
});
