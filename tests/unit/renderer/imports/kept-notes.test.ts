import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, emptyEpisode, MAX_LINES, MAX_TEXT, newLine } from "../../../../shared/episode";
import type { NotUnderstood } from "../../../../shared/imports";
import { piecesToKeep, withNotes } from "../../../../renderer/imports/kept-notes";

const id = countingIds("k");
const squat = emptyBlock(id, "exercise", { title: "Squat", lines: [newLine(id, "cue", "Sit back"), newLine(id, "note", "3 x lots")] });
const row = emptyBlock(id, "exercise", { title: "Row" });
const episode = emptyEpisode(id, { blocks: [squat, row] });
const piece = (fields: Partial<NotUnderstood>): NotUnderstood => ({ text: "eight or so", reason: "scheme", sentence: "No set line.", at: null, block: row.id, ...fields });

describe("what was not understood", () => {
  it("is kept where it belongs to a block, and once", () => {
    const [own, timed] = [piece({}), piece({ at: 72, block: squat.id })];
    const notUnderstood = [own, piece({ block: null, text: "um uh", reason: "hesitation" }), timed, piece({ block: squat.id, text: "3 x lots" }), piece({ block: "elsewhere" })];
    expect(piecesToKeep({ episode, notUnderstood })).toEqual([own, timed]);
    expect(withNotes(episode, [own, timed], id).blocks.map(({ lines }) => lines.map(({ kind, text }) => `${kind}: ${text}`))).toEqual([
      ["cue: Sit back", "note: 3 x lots", 'note: 1:12 "eight or so": No set line.'],
      ['note: "eight or so": No set line.'],
    ]);
    expect(withNotes(episode, [], id)).toEqual(episode);
  });

  it("goes no further than a line and a block hold", () => {
    const many = Array.from({ length: MAX_LINES + 5 }, () => piece({ text: "x".repeat(MAX_TEXT) }));
    const lines = withNotes(episode, many, id).blocks[1]?.lines ?? [];
    expect(lines).toHaveLength(MAX_LINES);
    expect(Math.max(...lines.map(({ text }) => text.length))).toBe(MAX_TEXT);
  });
});
