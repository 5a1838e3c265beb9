import { describe, expect, it } from "vitest";
import { emptyBlock, newLine, countingIds } from "../../../../../shared/episode";
import { DEFAULT_PACE } from "../../../../../shared/speech";
import { withBlank } from "../../../../../renderer/places/speak/blank-line";
import { blockTimeline } from "../../../../../renderer/voiceover/timeline";

const id = countingIds("b");
const block = emptyBlock(id, "talk", { lines: [newLine(id, "say", "One two."), newLine(id, "cue", "Sit"), newLine(id, "say", "Three four.")] });
const timeline = blockTimeline(block, DEFAULT_PACE, 20);

describe("a line that was begun", () => {
  it.each([[0, ["", "One two.", "Three four."]], [1, ["One two.", "", "Three four."]], [2, ["One two.", "", "Three four."]], [3, ["One two.", "Three four.", ""]], [null, ["One two.", "Three four.", ""]]])("at %j stands among the say lines", (at, texts) => {
    const lines = withBlank(timeline, block, { line: "new", at });
    expect(lines.map(({ placed }) => placed.text)).toEqual(texts);
    const froms = lines.map(({ from }) => from);
    expect(froms).toEqual([...froms].sort((a, b) => a - b));
  });

  it("is in no block without words, and alone in an empty one", () => {
    expect(withBlank(timeline, block, null)).toBe(timeline.lines);
    const empty = emptyBlock(id, "talk");
    expect(withBlank(blockTimeline(empty, DEFAULT_PACE, 20), empty, { line: "new", at: null })).toMatchObject([{ from: 0, placed: { line: "new", text: "" } }]);
  });

  it("is the block's own from its first letter on", () => {
    expect(withBlank(timeline, block, { line: block.lines[2]?.id ?? "", at: null })).toBe(timeline.lines);
  });
});
