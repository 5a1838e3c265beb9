import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, emptyBlock, emptyEpisode, newLine, type Block } from "../../../../../shared/episode";
import { wantsOf } from "../../../../../shared/filming";
import { writeWant } from "../../../../../renderer/places/shoot/write-want";

const id = countingIds("w");
const episode = (...blocks: Block[]) => emptyEpisode(id, { blocks });
const filmed = (kind: Block["kind"]) => emptyBlock(id, kind, { lines: [newLine(id, "shot", "Front, medium, 8 s: hello")] });

describe("writeWant", () => {
  it("writes a shot into the block that asks for it, and the want is covered from then on", () => {
    const closing = emptyBlock(id, "closing");
    const before = episode(filmed("opening"), closing);
    const want = wantsOf(before).find(({ block, need }) => block === closing.id && need === "must") ?? expect.fail("nothing is wanted");
    const after = applyEdits(before, writeWant(before, want, id));
    expect(after.blocks[1]?.lines.map(({ kind, text }) => [kind, text])).toEqual([["shot", want.shot]]);
    expect(wantsOf(after).find((each) => each.id === want.id)?.coveredBy).toBe(after.blocks[1]?.lines[0]?.id);
  });

  it("adds the opening first and the closing last where there is none", () => {
    const before = episode(emptyBlock(id, "warm-up"));
    const missing = wantsOf(before).filter(({ id: each, block }) => block === null && /^(opening|closing)$/.test(each));
    const after = missing.reduce((now, want) => applyEdits(now, writeWant(now, want, id)), before);
    expect(after.blocks.map(({ kind, lines }) => [kind, lines.length])).toEqual([["opening", 1], ["warm-up", 0], ["closing", 1]]);
  });

  it("puts what belongs nowhere into the last block", () => {
    const before = episode(emptyBlock(id, "warm-up"));
    const tone = wantsOf(before).find(({ id: each }) => each === "room-tone") ?? expect.fail("no room tone");
    expect(applyEdits(before, writeWant(before, tone, id)).blocks.map(({ lines }) => lines.map(({ text }) => text))).toEqual([[tone.shot]]);
  });
});
