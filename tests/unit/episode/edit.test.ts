import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, demoEpisode, emptyBlock, episodeSchema, newLine, type Edit } from "../../../shared/episode";
import { anyEpisode } from "./arbitrary";

const [opening, warmUp, row] = demoEpisode.blocks;
if (!opening || !warmUp || !row) throw new Error("the demo has blocks");
const cue = row.lines[0]!;
const set = row.sets[0]!;
const id = countingIds("new-");
const after = (...edits: Edit[]) => applyEdits(demoEpisode, edits);

describe("applyEdits", () => {
  it("inserts, moves and removes blocks", () => {
    const block = emptyBlock(id, "talk", { title: "Why packs hurt" });
    expect(after({ type: "insert-block", at: 1, block }).blocks[1]).toBe(block);
    expect(after({ type: "insert-block", at: null, block }).blocks.at(-1)).toBe(block);
    expect(after({ type: "move-block", block: opening.id, to: 2 }).blocks.slice(0, 3).map((b) => b.title)).toEqual([warmUp.title, row.title, opening.title]);
    expect(after({ type: "remove-block", block: opening.id }).blocks).toHaveLength(demoEpisode.blocks.length - 1);
  });

  it("changes lines and set lines by their id alone", () => {
    expect(after({ type: "set-line", line: cue.id, fields: { text: "New words", kind: "note" } }).blocks[2]?.lines[0]).toEqual({ id: cue.id, kind: "note", text: "New words" });
    expect(after({ type: "set-set", set: set.id, fields: { role: "working" } }).blocks[2]?.sets[0]).toEqual({ ...set, role: "working" });
    expect(after({ type: "remove-line", line: cue.id }).blocks[2]?.lines.includes(cue)).toBe(false);
    expect(after({ type: "remove-set", set: set.id }).blocks[2]?.sets.includes(set)).toBe(false);
    const line = newLine(id, "caution", "Stop for sharp pain");
    expect(after({ type: "insert-line", block: row.id, at: 0, line }).blocks[2]?.lines[0]).toBe(line);
  });

  it("changes facts and title", () => {
    const next = after({ type: "set-title", title: "Other" }, { type: "set-facts", fields: { publish: null } });
    expect([next.title, next.publish]).toEqual(["Other", null]);
  });

  it("leaves everything the same object when the target is gone", () => {
    const gone: Edit[] = [
      { type: "remove-block", block: "x" }, { type: "move-block", block: "x", to: 0 }, { type: "set-block", block: "x", fields: { title: "y" } },
      { type: "set-line", line: "x", fields: { text: "y" } }, { type: "remove-line", line: "x" }, { type: "set-set", set: "x", fields: { text: "y" } }, { type: "remove-set", set: "x" },
      { type: "insert-line", block: "x", at: null, line: cue },
    ];
    expect(applyEdits(demoEpisode, gone)).toBe(demoEpisode);
  });

  it("keeps the identity of blocks it does not touch, and never changes what it was given", () => {
    const frozen = JSON.stringify(demoEpisode);
    const next = after({ type: "set-line", line: cue.id, fields: { text: "New words" } });
    expect(next.blocks.map((block, i) => block === demoEpisode.blocks[i])).toEqual([true, true, false, true, true, true, true, true, true]);
    expect(JSON.stringify(demoEpisode)).toBe(frozen);
  });

  it("moves a block anywhere and back again without a trace", () => {
    fc.assert(fc.property(anyEpisode, fc.nat(), fc.nat(), (episode, from, to) => {
      const { length } = episode.blocks;
      fc.pre(length > 0);
      const block = episode.blocks[from % length]!;
      const there = applyEdits(episode, [{ type: "move-block", block: block.id, to: to % length }]);
      expect(there.blocks[to % length]).toBe(block);
      expect(applyEdits(there, [{ type: "move-block", block: block.id, to: from % length }])).toEqual(episode);
      expect(episodeSchema.safeParse(there).success).toBe(true);
    }));
  });
});
