import { describe, expect, it } from "vitest";
import { captionFaults, charactersIn, type Cue } from "../../../../shared/speech";

const cue = (start: number, end: number, text: string): Cue => ({ start, end, text });
const kinds = (...cues: Cue[]): string[] => captionFaults(cues).map(({ kind }) => kind);

describe("captionFaults", () => {
  it("is silent at the limits themselves", () => {
    expect(kinds(cue(0, 1, "Go."), cue(1 + 2 / 30, 8 + 2 / 30, `${"x".repeat(42)}\n${"y".repeat(42)}`))).toEqual([]);
    expect(kinds(cue(0, 2, "x".repeat(34)))).toEqual([]);
    expect(kinds(cue(0, 2, "Go."), cue(3, 5, "Rest."), cue(6.4, 8, "Go."))).toEqual([]);
  });

  it.each([
    ["too many lines", [cue(0, 5, "a\nb\nc")], "Caption 1 at 0:00.0 has 3 lines, at most 2 leave the picture free: split it in two."],
    ["line too long", [cue(0, 5, "x".repeat(43))], "Caption 1 at 0:00.0 has a line of 43 characters, at most 42 fit: break it."],
    ["too short", [cue(0, 0.9, "Go.")], "Caption 1 at 0:00.0 is shown for 0.9 s, at least 1 s are needed to see it: join it with its neighbour."],
    ["too long", [cue(0, 7.1, "Go.")], "Caption 1 at 0:00.0 is shown for 7.1 s, at most 7 s before it is read twice: split it or let it go."],
    ["too fast", [cue(0, 1, "x".repeat(20))], "Caption 1 at 0:00.0 asks for 20 characters a second, at most 17 can be read: use fewer words or more time."],
    ["too close", [cue(0, 2, "Go."), cue(2.02, 4, "Rest.")], "Caption 1 at 0:00.0 ends 20 ms before the next, 67 ms let the eye see the change: end it sooner."],
    ["flickering", [cue(0, 2, "Go."), cue(2.124, 4, "Rest.")], "Caption 1 at 0:00.0 ends 124 ms before the next, a gap shorter than 1 s flickers: let it stay until 67 ms before, or end it sooner."],
    ["overlap", [cue(0, 2, "Go."), cue(1.5, 4, "Rest.")], "Caption 1 at 0:00.0 is still shown when the next begins at 0:01.5: end it sooner."],
  ])("tells %s", (kind, cues, sentence) => {
    expect(captionFaults(cues)).toEqual([{ cue: 0, kind, sentence }]);
  });

  it("counts characters as people do", () => {
    expect(["abc\nde", "é", "e\u0301", "🏋🏽‍♀️", ""].map(charactersIn)).toEqual([5, 1, 1, 1, 0]);
  });
});
