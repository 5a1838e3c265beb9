import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, demoEpisode, emptyBlock, emptyEpisode, type Edit } from "../../../../shared/episode";
import { phoneSession } from "../../../../shared/exports";

const row = demoEpisode.blocks[2] ?? expect.fail("no row");
const after = (...edits: Edit[]) => phoneSession(applyEdits(demoEpisode, edits));
const blockOf = (session: ReturnType<typeof phoneSession>) => session.blocks.find(({ id }) => id === row.id) ?? expect.fail("no row");

describe("the session a phone carries", () => {
  it("has every block in order, with its sets as they are done, their marks and what to see", () => {
    const session = phoneSession(demoEpisode);
    expect(session.blocks.map(({ name }) => name)).toEqual(demoEpisode.blocks.map(({ title }) => title));
    const { sets, marks, shots, alternates, cautions, station } = blockOf(session);
    expect(sets.map(({ name, work, load, restSeconds }) => [name, work, load, restSeconds])).toEqual([
      ["Ramp-up 1", "8 reps", "12 kg each hand", 60], ["Set 1", "8 to 10 reps", "22 kg each hand", 90], ["Set 2", "8 to 10 reps", "22 kg each hand", 90], ["Set 3", "8 to 10 reps", "22 kg each hand", 0],
    ]);
    expect(marks.map(({ letter, key }) => [letter, key])).toEqual([["A", "side full"], ["B", "rear medium"], ["C", "insert insert"]]);
    expect(shots.map(({ short, need, seconds }) => [short, need, seconds])).toEqual([["Side, full", "must", 20], ["Rear, medium", "must", 15], ["Insert", "nice", 6]]);
    expect([alternates, cautions, station]).toEqual([["Dumbbell row with one hand on a bench, same set line"], ["Sharp pain at the front of the shoulder: stop, go lighter or leave it out today"], "incline bench"]);
  });

  it("has the marks where the coach put them, and what is in the way there", () => {
    const moved = after(
      { type: "set-block", block: row.id, fields: { filming: { marks: [{ mark: "side full", bearing: 80, distance: 3.3 }], filmed: [] } } },
      { type: "set-facts", fields: { session: { ...demoEpisode.session, floors: [{ station: "incline bench", walls: { ahead: null, behind: null, left: 2, right: null }, mirrors: [], aisle: null }] } } },
    );
    const [mark] = blockOf(moved).marks;
    expect(mark?.distance).toBe(3.3);
    expect(mark?.words).toBe("from the side, head to toe; moved: 80\u00b0 from ahead on the left");
    expect(mark?.warnings.length).toBeGreaterThan(0);
  });

  it("begins typing from what is planned: the least of a range, in the session's unit, nothing where nothing is lifted", () => {
    expect(blockOf(phoneSession(demoEpisode)).sets.map(({ planned }) => planned)).toEqual([null, ...Array.from({ length: 3 }, () => ({ load: 22, reps: 8, rir: 2 }))]);
    const line = (text: string): Edit => ({ type: "set-set", set: row.sets[1]?.id ?? "", fields: { text } });
    expect(blockOf(after(line("3 x 8 @ 50 lb"))).sets[1]?.planned).toEqual({ load: 22.5, reps: 8, rir: null });
    expect(blockOf(after(line("3 x 40 s @ bodyweight"))).sets[1]?.planned).toEqual({ load: null, reps: null, rir: null });
    expect(blockOf(after(line("10/8/6 @ 20 kg"))).sets.slice(1).map(({ planned }) => planned?.reps)).toEqual([10, 8, 6]);
  });

  it("asks for a closing that no line asks for, and for the one that does", () => {
    const bare = phoneSession(demoEpisode);
    expect([bare.closing, bare.extras.map(({ what }) => what)]).toEqual([[], ["room-tone", "closing"]]);
    const closing = demoEpisode.blocks.at(-1)?.id ?? "";
    const asked = after({ type: "insert-line", block: closing, at: null, line: { id: "bye", kind: "shot", text: "Front, medium, 12 s: goodbye" } });
    expect([asked.closing, asked.extras.map(({ what }) => what)]).toEqual([["bye"], ["room-tone"]]);
    const none = after({ type: "remove-block", block: closing });
    expect(none.extras.find(({ what }) => what === "closing")?.block).toBeNull();
  });

  it("is another plan when a set, a shot or a block changes, and the same when a title does", () => {
    const { plan } = phoneSession(demoEpisode);
    expect(after({ type: "set-title", title: "Other" }).plan).toBe(plan);
    expect(after({ type: "remove-line", line: row.lines.find(({ kind }) => kind === "shot")?.id ?? "" }).plan).not.toBe(plan);
    expect(after({ type: "set-set", set: row.sets[1]?.id ?? "", fields: { text: "2 x 8 @ 22 kg" } }).plan).not.toBe(plan);
    expect(after({ type: "move-block", block: row.id, to: 4 }).plan).not.toBe(plan);
  });

  it("goes through blocks without sets, and is no trouble when there is nothing", () => {
    const newId = countingIds("n-");
    expect(phoneSession(emptyEpisode(newId)).blocks).toEqual([]);
    const talk = phoneSession(emptyEpisode(newId, { blocks: [emptyBlock(newId, "talk", { title: "Why" })] }));
    expect(talk.blocks[0]?.sets).toHaveLength(1);
    expect(talk.blocks[0]?.sets[0]).toMatchObject({ role: "run", planned: null });
  });
});
