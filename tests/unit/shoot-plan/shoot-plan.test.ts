import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type BlockKind, type Episode } from "../../../shared/episode";
import { coverageViolations, MOVE_SECONDS } from "../../../shared/filming";
import { moveSecondsOf, remedyIn, shootPlan, type ShootBlock } from "../../../shared/shoot-plan";

const newId = countingIds("t");

function block(kind: BlockKind, ramp: readonly string[], sets: readonly string[], shots: readonly string[], fields: Partial<Block> = {}): Block {
  return emptyBlock(newId, kind, {
    title: "Row", ...fields,
    sets: [...ramp.map((text) => ({ id: newId(), role: "ramp-up" as const, text })), ...sets.map((text) => ({ id: newId(), role: "working" as const, text }))],
    lines: shots.map((text) => newLine(newId, "shot", text)),
  });
}
const episode = (...blocks: Block[]): Episode => emptyEpisode(newId, { blocks });
const withCameras = (of: Episode, cameras: number): Episode => ({ ...of, session: { ...of.session, cameras } });
const first = (of: Episode): ShootBlock => shootPlan(of).blocks[0] ?? expect.fail("no block");
/** "Side: set 2" for everything that is filmed. */
const filmed = ({ shots, wants, sets }: ShootBlock): string[] =>
  shots.map(({ want, set }) => `${wants.find(({ id }) => id === want)?.shot.subject ?? ""}: ${sets.find(({ id }) => id === set)?.name ?? ""}`);
const reasons = ({ lost }: ShootBlock): string[] => lost.map(({ why }) => why);

describe("shootPlan", () => {
  it("films a shot on the set it names, and others where they cost least", () => {
    const one = first(episode(block("exercise", ["1x8, rest 60"], ["3x8, rest 90"], ["Side, full, set 2: arms", "Rear, medium, set 3: back", "Front, full: knees"])));
    expect(one.sets.map(({ name }) => name)).toEqual(["Ramp-up 1", "Set 1", "Set 2", "Set 3"]);
    expect(filmed(one)).toEqual(["knees: Ramp-up 1", "arms: Set 2", "back: Set 3"]);
    expect(one.moves.map(({ from, to, fits }) => [from, to, fits])).toEqual([["front full", "side full", true], ["side full", "rear medium", true]]);
  });

  it("asks once for every set a line names", () => {
    const one = first(episode(block("exercise", [], ["3x8"], ["Side, full, sets 1-3: arms"])));
    expect(filmed(one)).toEqual(["arms: Set 1", "arms: Set 2", "arms: Set 3"]);
    expect(one.moves).toEqual([]);
  });

  it.each<[string, readonly string[], readonly string[], string[]]>([
    ["two marks name one set", [], ["Side, full, set 1: arms", "Front, full, set 1: knees"], ["Set 1 is filmed from the side, head to toe."]],
    ["the set is not planned", [], ["Side, full, set 5: arms"], ["There is no set 5."]],
    ["there is no ramp-up set", [], ["Side, full, ramp-up set: arms"], ["There is no ramp-up set."]],
    ["there is no ramp-up set of that number", ["1x8"], ["Side, full, ramp-up set 2: arms"], ["There is no ramp-up set 2."]],
    ["there are more marks than sets", [], ["Side: a", "Front: b", "Rear: c", "Low: d"], ["Every set it could be filmed on shows something else."]],
  ])("says why a shot is lost: %s", (_, ramp, shots, why) => {
    expect(reasons(first(episode(block("exercise", ramp, ["3x8"], shots))))).toEqual(why);
  });

  it("shows a demonstration before the sets, as often as its marks ask for", () => {
    const shots = ["Front, full, demo: set-up", "Side, full, demo: path", "Side, full, set 1: arms"];
    const plan = episode(block("exercise", [], ["2x8"], shots));
    expect(first(plan).sets.map(({ name }) => name)).toEqual(["Demonstration 1", "Demonstration 2", "Set 1", "Set 2"]);
    expect(first(withCameras(plan, 2)).sets.map(({ name }) => name)).toEqual(["Demonstration", "Set 1", "Set 2"]);
    expect(filmed(first(plan))).toEqual(["set-up: Demonstration 1", "path: Demonstration 2", "arms: Set 1"]);
  });

  it("runs through a block without sets once for each mark, within its planned time", () => {
    const one = first(episode(block("warm-up", [], [], ["Front, full, 20 s: circles", "Side, full, set 2, 10 s: squats"], { minutes: 5 })));
    expect(one.sets.map(({ name, workSeconds, restSeconds }) => [name, workSeconds, restSeconds])).toEqual([["Run 1", 15, 270], ["Run 2", 15, 0]]);
    expect([one.lost, one.extraSeconds, one.recordedSeconds]).toEqual([[], 0, 38]);
    expect(first(episode(block("talk", [], [], []))).sets.map(({ name }) => name)).toEqual(["The whole block"]);
  });

  it("counts moves that do not fit in a rest, and hands them to the gym clock", () => {
    const one = block("exercise", [], ["2x8, rest 30"], ["Side, set 1: a", "Front, set 2: b"]);
    expect(first(episode(one)).extraSeconds).toBe(MOVE_SECONDS - 30);
    expect(first(episode(one)).moves[0]?.fits).toBe(false);
    expect(moveSecondsOf(episode())(one)).toBe(MOVE_SECONDS - 30);
    expect(moveSecondsOf(withCameras(episode(), 2))(one)).toBe(0);
  });

  it("names set-ups kept from the block before at the same station", () => {
    const blocks = [block("exercise", [], ["1x8"], ["Side: a"], { station: "rack" }), block("exercise", [], ["1x8"], ["Side: b"], { station: "Rack" }), block("exercise", [], ["1x8"], ["Side: c"], { station: "floor" })];
    expect(shootPlan(episode(...blocks)).blocks.map(({ kept }) => kept)).toEqual([[], [{ camera: 1, mark: "side any" }], []]);
  });

  it("is the same object for the same episode, and a plan that keeps its own rules for any", () => {
    expect(shootPlan(demoEpisode)).toBe(shootPlan(demoEpisode));
    const shot = fc.tuple(fc.constantFrom("Side", "Front, medium", "Rear", "Insert", "High, full"), fc.constantFrom("", ", set 1", ", set 2", ", sets 1-3", ", demo", ", ramp-up set"), fc.constantFrom("", ", nice")).map((parts) => `${parts.join("")}: x`);
    const any = fc.tuple(fc.constantFrom<BlockKind>("exercise", "talk", "opening"), fc.constantFrom<string[]>([], ["1x5"]), fc.constantFrom<string[]>([], ["3x8, rest 30"], ["2x8", "1x12"], ["nonsense"]), fc.array(shot, { maxLength: 7 }));
    fc.assert(fc.property(fc.array(any, { maxLength: 4 }), fc.constantFrom(1, 2), (rows, cameras) => {
      const { problem, plan, blocks, lost } = shootPlan(withCameras(episode(...rows.map((row) => block(...row))), cameras));
      expect(coverageViolations(problem, plan)).toEqual([]);
      expect(blocks.flatMap((each) => each.lost.map(({ want }) => want))).toEqual(lost);
      expect(blocks.reduce((sum, each) => sum + each.extraSeconds, 0)).toBeCloseTo(plan.extraSeconds, 6);
      expect(blocks.reduce((sum, each) => sum + each.moves.length, 0)).toBe(plan.moves);
    }), { numRuns: 200, seed: 41 });
  });
});

describe("remedyIn", () => {
  const remedy = (of: Episode) => remedyIn(shootPlan(of), first(of), newId);
  const mended = (of: Episode): ShootBlock => first(applyEdits(of, remedy(of)?.edits ?? []));

  it("has none where nothing is lost", () => expect(remedy(demoEpisode)).toBeNull());

  it("moves a shot to a set that is free", () => {
    const one = episode(block("exercise", [], ["3x8"], ["Side, full, set 1: arms", "Front, full, set 1: knees"]));
    expect(remedy(one)).toMatchObject({ sentence: 'Another set of Row films "knees" and takes no longer.', label: 'Films "knees" on set 2' });
    expect(filmed(mended(one))).toEqual(["arms: Set 1", "knees: Set 2"]);
  });

  it("adds a light set without telling what to lift", () => {
    const one = episode(block("exercise", [], ["2 x 8-10 @ 40 kg, tempo 3-1-1-0, rest 90 s"], ["Side: a", "Front: b", "Rear, ramp-up set: c"]));
    expect(remedy(one)?.label).toBe("Adds a ramp-up set: 1 x 8-10, rest 90 s, at a light load of your choice");
    expect(mended(one).lost).toEqual([]);
  });

  it("makes a demonstration of a shot that asks for one in a block of sets", () => {
    const one = episode(block("exercise", [], ["1x8"], ["Side: a", "Front: b", "Rear, ramp-up set: c"]));
    expect(mended(one).lost.length).toBeLessThan(first(one).lost.length);
  });

  it("never loses more than before, and what it promises is filmed", () => {
    const shot = fc.tuple(fc.constantFrom("Side", "Front, medium", "Rear", "Low"), fc.constantFrom("", ", set 1", ", set 1", ", sets 1-2", ", set 4", ", demo", ", ramp-up set", ", working set")).map((parts) => `${parts.join("")}: x`);
    fc.assert(fc.property(fc.constantFrom<string[]>([], ["1x5"]), fc.constantFrom<string[]>(["1x8, rest 30"], ["2x8"]), fc.array(shot, { minLength: 1, maxLength: 6 }), (ramp, sets, shots) => {
      const one = episode(block("exercise", ramp, sets, shots));
      const found = remedy(one);
      expect(found === null).toBe(first(one).lost.length === 0);
      if (found && found.edits.length > 0) expect(mended(one).lost.length).toBeLessThan(first(one).lost.length);
    }), { numRuns: 200, seed: 42 });
  });
});
