import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkEpisode } from "../../../shared/checks";
import { episodeClocks } from "../../../shared/clocks";
import { applyEdits, countingIds, demoEpisode, emptyBlock, findBlock, newLine, type Episode } from "../../../shared/episode";
import { changedPart, remedyPreview } from "../../../renderer/findings/remedy-preview";

const ids = countingIds("t");
const row = demoEpisode.blocks[2];
if (!row) throw new Error("the demo has no third block");
const cue = row.lines.find(({ kind }) => kind === "cue");
const set = row.sets[0];
if (!cue || !set) throw new Error("the third block of the demo has no cue or no set line");
const where = `3. ${row.title}`;

describe("remedyPreview", () => {
  it("shows a line's words now and then", () => {
    expect(remedyPreview(demoEpisode, [{ type: "set-line", line: cue.id, fields: { text: "Elbows back" } }])).toEqual([{ where, rows: [{ word: "cue", now: cue.text, then: "Elbows back" }] }]);
  });

  it("shows a line that becomes another kind with both kinds", () => {
    expect(remedyPreview(demoEpisode, [{ type: "set-line", line: cue.id, fields: { kind: "note" } }])[0]?.rows).toEqual([{ word: "note", now: `cue: ${cue.text}`, then: `note: ${cue.text}` }]);
  });

  it("shows what is added and what is taken away, as the margin of the sheet calls it", () => {
    const changes = remedyPreview(demoEpisode, [
      { type: "insert-line", block: row.id, at: null, line: newLine(ids, "caution", "Go light") }, { type: "remove-line", line: cue.id },
      { type: "insert-set", block: row.id, at: null, set: { id: ids(), role: "working", text: "2 x 8" } }, { type: "set-set", set: set.id, fields: { text: "1 x 5" } },
      { type: "insert-alternate", block: row.id, at: null, alternate: { id: ids(), text: "Cable row" } },
    ]);
    expect(changes).toEqual([{ where, rows: [
      { word: set.role === "working" ? "sets" : "ramp-up", now: set.text, then: "1 x 5" }, { word: "sets", now: null, then: "2 x 8" },
      { word: "caution", now: null, then: "Go light" }, { word: "if taken", now: null, then: "Cable row" }, { word: "cue", now: cue.text, then: null },
    ] }]);
  });

  it("shows a new block at its place with its lines", () => {
    const block = emptyBlock(ids, "talk", { title: "A word on grip", lines: [newLine(ids, "say", "Hold it like a bag.")] });
    expect(remedyPreview(demoEpisode, [{ type: "insert-block", at: 1, block }])).toEqual([{ where: "New block, 2. A word on grip", rows: [{ word: "say", now: null, then: "Hold it like a bag." }] }]);
  });

  it("shows where a block stood and where it will, and not the blocks it only passes", () => {
    const [changes] = [remedyPreview(demoEpisode, [{ type: "move-block", block: row.id, to: 0 }])];
    expect(changes).toEqual([{ where, rows: [{ word: "place", now: `3, behind ${demoEpisode.blocks[1]?.title}`, then: "1, at the top" }] }]);
  });

  it("shows a block that goes as a whole", () => {
    expect(remedyPreview(demoEpisode, [{ type: "remove-block", block: row.id }])).toEqual([{ where, rows: [{ word: "block", now: `${row.title}, with all its lines`, then: null }] }]);
  });

  it("shows the facts of a block and of the episode in words", () => {
    expect(remedyPreview(demoEpisode, [{ type: "set-block", block: row.id, fields: { clipSeconds: 300, minutes: 12 } }])[0]?.rows.map(({ word, then }) => [word, then])).toEqual([["floor time", "12 min"], ["clip", "300 s"]]);
    const { session } = demoEpisode;
    expect(remedyPreview(demoEpisode, [{ type: "set-facts", fields: { session: { ...session, kit: [...session.kit, "Chalk ball"] } } }, { type: "set-facts", fields: { video: { ...demoEpisode.video, targetSeconds: 700 } } }])).toEqual([
      { where: "Session", rows: [{ word: "kit", now: null, then: "Chalk ball" }] },
      { where: "Video", rows: [{ word: "target seconds", now: String(demoEpisode.video.targetSeconds), then: "700" }] },
    ]);
    expect(remedyPreview(demoEpisode, [{ type: "set-title", title: "Rows" }])).toEqual([{ where: "Title", rows: [{ word: "title", now: demoEpisode.title, then: "Rows" }] }]);
  });

  it("shows nothing when nothing would change", () => {
    expect(remedyPreview(demoEpisode, [{ type: "remove-line", line: "gone" }, { type: "set-line", line: cue.id, fields: { text: cue.text } }])).toEqual([]);
  });

  it("shows a change for each remedy the checks offer on an episode with everything missing", () => {
    const bare: Episode = { ...demoEpisode, blocks: demoEpisode.blocks.filter(({ kind }) => kind === "exercise").map((block) => ({ ...block, lines: [newLine(ids, "cue", "Arch your low back hard")], alternates: [] })) };
    const remedies = checkEpisode({ episode: bare, clocks: episodeClocks(bare), now: "2026-03-05T08:00:00Z", newId: ids }).flatMap((finding) => finding.remedies);
    expect(remedies.length).toBeGreaterThan(10);
    for (const { label, edits } of remedies) {
      const rows = remedyPreview(bare, edits).flatMap((change) => change.rows);
      expect(rows.length, label).toBeGreaterThan(0);
      for (const { now, then } of rows) expect(now === then, label).toBe(false);
      expect(applyEdits(bare, edits), label).not.toEqual(bare);
    }
    expect(findBlock(bare, row.id)).not.toBeNull();
  });
});

describe("changedPart", () => {
  const part = (now: string, then: string): [string, string] => {
    const { start, nowEnd, thenEnd } = changedPart(now, then);
    return [now.slice(start, nowEnd), then.slice(start, thenEnd)];
  };

  it("finds whole words that differ", () => {
    expect(part("Say 30 kilos today", "Say 35 kilos today")).toEqual(["30", "35"]);
    expect(part("Breathe out on top", "Breathe out / on top")).toEqual(["", "/ "]);
    expect(part("All new", "Other words")).toEqual(["All new", "Other words"]);
  });

  it("gives back both texts with what is common around it, and nothing for equal texts", () => {
    const words = fc.array(fc.constantFrom("a", "ab", "b", "ba"), { maxLength: 5 }).map((list) => list.join(" "));
    fc.assert(fc.property(words, words, (now, then) => {
      const { start, nowEnd, thenEnd } = changedPart(now, then);
      expect(start).toBeLessThanOrEqual(Math.min(nowEnd, thenEnd));
      expect(now.slice(0, start)).toBe(then.slice(0, start));
      expect(now.slice(nowEnd)).toBe(then.slice(thenEnd));
    }));
    expect(part("same words", "same words")).toEqual(["", ""]);
  });
});
