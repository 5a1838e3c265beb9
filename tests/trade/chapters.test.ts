import { describe, expect, it } from "vitest";
import { demoEpisode } from "../../shared/episode";
import { chapterProblems, chaptersOf, chapterText, chapterTime } from "../../shared/exports/publish";
import { screenClock } from "../../shared/speech";
import { shotSeconds } from "../../shared/filming";

/**
 * The common rule of video platforms, as their help pages and several independent guides state it: the list begins at 0:00, has three
 * entries or more, goes forward in time, and no chapter is shorter than 10 seconds. That the last chapter's length counts too is a
 * cautious reading of it.
 */
const list = (...at: number[]) => at.map((second, i) => ({ at: second, title: `Part ${i + 1}` }));

describe("chapter lists against the platforms' common rule", () => {
  it("accepts 0:00, 0:45 and 6:10 in a nine-minute video", () => {
    expect(chapterProblems(list(0, 45, 370), 540)).toEqual([]);
  });

  it.each([
    ["one that starts at 0:05", list(5, 45, 370), 540],
    ["a chapter of 8 seconds", list(0, 370, 378), 540],
    ["two entries only", list(0, 300), 540],
    ["a last chapter of 5 seconds", list(0, 45, 535), 540],
    ["times that go back", list(0, 370, 45), 540],
  ])("refuses %s", (_name, chapters, length) => {
    expect(chapterProblems(chapters, length)).not.toEqual([]);
  });

  it("writes hours from one hour on", () => {
    expect(chapterTime(3725)).toBe("1:02:05");
  });

  it("holds for the demo episode, line for line", () => {
    const screen = screenClock(demoEpisode, shotSeconds);
    const chapters = chaptersOf(demoEpisode, screen);
    expect(chapterProblems(chapters, screen.seconds)).toEqual([]);
    expect(chapterText(chapters).split("\n").every((line) => /^(\d+:)?\d{1,2}:\d{2} \S.*$/.test(line))).toBe(true);
    expect(chapters[0]?.at).toBe(0);
  });
});
