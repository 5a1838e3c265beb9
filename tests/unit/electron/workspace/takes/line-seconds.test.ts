import { describe, expect, it } from "vitest";
import { lineSeconds } from "../../../../../electron/workspace/takes/line-seconds";
import type { Take } from "../../../../../shared/bridge";
import { countingIds, emptyBlock, emptyEpisode, newLine } from "../../../../../shared/episode";
import { DEFAULT_PACE, speak } from "../../../../../shared/speech";

const newId = countingIds("s-");
const TEXTS = ["Stand tall, feet under the hips.", "Press up and slightly away.", "Lower it slowly, all the way."];
const says = TEXTS.map((text) => newLine(newId, "say", text));
const cue = newLine(newId, "cue", "Elbows in.");
const episode = emptyEpisode(newId, { blocks: [emptyBlock(newId, "exercise", { title: "Press", lines: [...says, cue] })] });

const START = Date.parse("2027-03-04T10:00:00Z");
/** A recorded take of a line; `end` is when it was noted, seconds after ten. */
const take = (line: number, seconds: number | null, fields: Partial<Take> = {}, end = 600 * line): Take => ({
  id: `00000000-0000-4000-8000-${newId().replace(/\D/g, "").padStart(12, "0")}`, line: says[line]?.id ?? "", text: TEXTS[line] ?? "", file: "one.wav", seconds, recorded: seconds, planned: 2,
  at: new Date(START + end * 1000).toISOString(), chosen: true, ...fields,
});
const of = (takes: readonly Take[]): [string, number][] => [...lineSeconds(takes, episode, DEFAULT_PACE)].map(([line, { seconds }]) => [line, seconds]);
const id = (line: number): string => says[line]?.id ?? "";

describe("seconds of lines from takes", () => {
  it("are those of the chosen take of each line, by no place in the block", () => {
    expect(of([take(0, 2.5, { chosen: false }), take(0, 3.1), take(1, 1.9), take(1, 7, { chosen: false })])).toEqual([[id(0), 3.1], [id(1), 1.9]]);
    expect(lineSeconds([take(0, 3.1)], episode, DEFAULT_PACE).get(id(0))).toEqual({ seconds: 3.1 });
  });

  it("are not known where the words changed since, or the take was broken off or is empty", () => {
    expect(of([take(0, 3.1, { text: "Stand tall." }), take(1, null), take(2, 0)])).toEqual([]);
  });

  it("are not known of lines that are gone or that nobody says", () => {
    expect(of([take(0, 3, { line: "gone" }), take(0, 3, { line: cue.id, text: cue.text })])).toEqual([]);
  });

  it("leave out the pause before the next line where a tap ended one take and began the next", () => {
    const tapped = [take(0, 4, { file: null }, 4), take(1, 3, { file: null }, 7.05), take(2, 5, { file: null }, 12.1)];
    const share = (line: number): number => speak(TEXTS[line] ?? "").seconds / (speak(TEXTS[line] ?? "").seconds + DEFAULT_PACE.sentenceSeconds);
    const [first, second, last] = of(tapped).map(([, seconds]) => seconds);
    expect(first).toBeCloseTo(4 * share(0), 9);
    expect(second).toBeCloseTo(3 * share(1), 9);
    expect(last).toBe(5);
  });

  it("keep all seconds of a line that was tapped by itself", () => {
    expect(of([take(0, 4, { file: null }, 4), take(1, 3, { file: null }, 60)])).toEqual([[id(0), 4], [id(1), 3]]);
  });
});
