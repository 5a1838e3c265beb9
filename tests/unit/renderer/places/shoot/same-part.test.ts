import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, emptyBlock, emptyEpisode, newLine, type Edit, type Episode } from "../../../../../shared/episode";
import { shootPlan } from "../../../../../shared/shoot-plan";
import { samePart } from "../../../../../renderer/places/shoot/same-part";

const id = countingIds("s");
const block = (title: string, shots: readonly string[]) => emptyBlock(id, "exercise", {
  title, station: "bench", sets: [{ id: id(), role: "working", text: "3 x 8, rest 90 s" }], lines: shots.map((text) => newLine(id, "shot", text)),
});
const [row, press] = [block("Row", ["Side, full, set 1: a"]), block("Press", ["Side, full, set 2: b"])];
const episode = emptyEpisode(id, { blocks: [row, press] });
const part = (of: Episode, at: number) => ({ episode: of, shoot: shootPlan(of).blocks[at] ?? expect.fail("no block"), number: at + 1 });
const after = (...edits: Edit[]): Episode => applyEdits(episode, edits);
const same = (of: Episode, at: number): boolean => samePart(part(episode, at), part(of, at));

describe("samePart", () => {
  it("leaves other blocks as they are when one is changed", () => {
    const moved = after({ type: "set-block", block: row.id, fields: { filming: { marks: [{ mark: "side full", bearing: 90, distance: 3 }], filmed: [] } } });
    expect([same(moved, 0), same(moved, 1)]).toEqual([false, true]);
  });

  it("draws again what the block before decides: a camera that no longer stays", () => {
    const line = row.lines[0] ?? expect.fail("no line");
    const turned = after({ type: "set-line", line: line.id, fields: { text: "Rear, full, set 1: a" } });
    expect(same(turned, 1)).toBe(false);
  });

  it("draws everything again for another lens, and what comes later for another order", () => {
    const filming = { lens: "tele" as const, stature: 1.75, format: "1080p30 HEVC", freeGigabytes: null, batteryMinutes: null };
    const tele = after({ type: "set-facts", fields: { session: { ...episode.session, filming } } });
    expect([same(tele, 0), same(tele, 1)]).toEqual([false, false]);
    const first = after({ type: "insert-block", at: 0, block: emptyBlock(id, "opening") });
    expect(samePart(part(episode, 0), part(first, 1))).toBe(false);
  });
});
