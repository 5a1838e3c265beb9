import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type BlockKind, type Episode } from "../../../../shared/episode";
import { exerciseById } from "../../../../shared/exercises";
import { ASSUMED, gymClock, plannedSets, printSetLine, type MoveSeconds } from "../../../../shared/training";
import { anyScheme } from "../scheme-arbitrary";

const newId = countingIds("clock-");
const still: MoveSeconds = () => 0;

function block(kind: BlockKind, working: readonly string[], fields: Partial<Block> = {}, rampUp: readonly string[] = []): Block {
  const sets = [...working.map((text) => ({ id: newId(), role: "working" as const, text })), ...rampUp.map((text) => ({ id: newId(), role: "ramp-up" as const, text }))];
  return emptyBlock(newId, kind, { sets, ...fields });
}

const episode = (...blocks: Block[]): Episode => emptyEpisode(newId, { blocks });
const secondsOf = (one: Block, label: string, moves = still): number => gymClock(episode(one), moves).blocks[0]?.parts.find((part) => part.label === label)?.seconds ?? 0;

describe("planned sets", () => {
  it("puts ramp-up sets first, numbers each role and leaves no rest after the last set", () => {
    const sets = plannedSets(block("exercise", ["2 x 8-10 @ 22 kg each hand, tempo 3-1-1-0, rest 75 s"], {}, ["1x8 @ 12kg"]));
    expect(sets.map(({ number, role, workSeconds, restSeconds, work, load }) => ({ number, role, workSeconds, restSeconds, work, load }))).toEqual([
      { number: 1, role: "ramp-up", workSeconds: 24, restSeconds: 60, work: "8 reps", load: "12 kg" },
      { number: 1, role: "working", workSeconds: 45, restSeconds: 75, work: "8 to 10 reps", load: "22 kg each hand" },
      { number: 2, role: "working", workSeconds: 45, restSeconds: 0, work: "8 to 10 reps", load: "22 kg each hand" },
    ]);
  });

  it.each([
    ["1x10", 30, 0, "10 reps"], ["1x10 tempo 30X1", 50, 0, "10 reps"], ["1x10, 4s negative", 50, 0, "10 reps"], ["1x10/side", 75, 15, "10 reps each side"], ["1 x 45s", 45, 0, "45 s"], ["1 x 30s e/s", 75, 15, "30 s each side"],
    ["1 x 60 m", 50, 0, "60 m"], ["1 x AMRAP", 36, 0, "as many as possible"], ["AMRAP 6 min", 360, 0, "as many as possible in 360 s"], ["1x5+", 15, 0, "5 reps or more"], ["1x1", 3, 0, "1 rep"], ["1x10 + 1 drop", 70, 0, "10 reps"], ["5 min", 300, 0, "300 s"],
  ])("times %s", (text, workSeconds, changeSeconds, work) => {
    expect(plannedSets(block("exercise", [text]))[0]).toMatchObject({ workSeconds, changeSeconds, work });
  });

  it("takes each rung of a ladder and adds AMRAP to the last set only", () => {
    expect(plannedSets(block("exercise", ["12/10/8+"])).map((set) => [set.workSeconds, set.work])).toEqual([[36, "12 reps"], [30, "10 reps"], [24, "8 reps or more"]]);
  });

  it("names bodyweight and bands in words", () => {
    expect(["1x8 BW", "1x8 BW+5kg", "1x8 band", "1x8 80%", "1x8"].map((text) => plannedSets(block("exercise", [text]))[0]?.load)).toEqual(["bodyweight", "bodyweight + 5 kg", "band", "80%", ""]);
  });

  it("fills every minute of an EMOM", () => {
    const sets = plannedSets(block("exercise", ["EMOM 3 min: 5 reps"]));
    expect(sets.map((set) => [set.workSeconds, set.restSeconds])).toEqual([[15, 45], [15, 45], [60, 0]]);
  });

  it("gives the same answer for the same block without reading it again", () => {
    const one = block("exercise", ["3x8"]);
    expect(plannedSets(one)).toBe(plannedSets(one));
  });
});

describe("the gym clock", () => {
  it("adds up to the second for the demo episode and for every block", () => {
    const clock = gymClock(demoEpisode, still);
    expect(clock.slotSeconds).toBe(75 * 60);
    expect(clock.blocks.flatMap((one) => one.unread)).toEqual([]);
    expect(clock.blocks.reduce((sum, one) => sum + one.seconds, 0)).toBe(clock.seconds);
    expect(clock.seconds).toBeGreaterThan(30 * 60);
    expect(clock.seconds).toBeLessThan(clock.slotSeconds);
  });

  it("takes set-up and station from the catalogue", () => {
    const row = exerciseById("chest-supported-row");
    const one = block("exercise", ["3x8"], { exercise: "chest-supported-row" });
    expect(secondsOf(one, "set-up")).toBe(row?.setupSeconds);
    expect(gymClock(episode(block("warm-up", [], { minutes: 5, station: "free floor" }), one), still).blocks[1]?.parts.at(-1)).toEqual({ label: "change of station", seconds: 60 });
    expect(gymClock(episode(block("warm-up", [], { minutes: 5, station: row?.station ?? "" }), one), still).blocks[1]?.parts.at(-1)?.label).toBe("rest");
  });

  it("lets planned minutes stand for the whole block", () => {
    expect(gymClock(episode(block("exercise", ["3x8"], { minutes: 7.5 })), () => 500).blocks[0]?.parts).toEqual([{ label: "planned", seconds: 450 }]);
  });

  it("plans a minute for talk with lines, five for a warm-up, and nothing for empty blocks", () => {
    const say = [newLine(newId, "say", "Hello")];
    expect((["opening", "closing", "talk", "warm-up", "cool-down"] as const).map((kind) => secondsOf(block(kind, [], { lines: say }), "planned"))).toEqual([60, 60, 60, 300, 300]);
    expect(gymClock(episode(block("opening", [])), still).seconds).toBe(0);
  });

  it("counts what camera moves take beyond the rests, as it is handed in", () => {
    const one = block("exercise", ["3x8, rest 40"], {}, ["1x8, rest 30"]);
    expect([0, 5, 20.4].map((seconds) => secondsOf(one, "camera moves", () => seconds))).toEqual([0, 5, 20]);
  });

  it("keeps the change of side apart from the sets", () => {
    const one = block("exercise", ["3 x 8 each side, rest 60"]);
    expect(["sets", "change of side", "rest"].map((label) => secondsOf(one, label))).toEqual([144, 45, 120]);
  });

  it("lists set lines it cannot read and counts the others", () => {
    const clock = gymClock(episode(block("exercise", ["3x8", "see notes", " "])), still);
    expect(clock.blocks[0]?.unread).toEqual(["see notes"]);
    expect(clock.seconds).toBe(ASSUMED.setUp + 72 + 180);
  });

  it("remembers blocks that did not change", () => {
    const [one, two] = [block("exercise", ["3x8"]), block("exercise", ["3x10"])];
    const first = gymClock(episode(one, two), still);
    const second = gymClock(episode(one, block("exercise", ["4x10"])), still);
    expect(second.blocks[0]).toBe(first.blocks[0]);
    expect(second.blocks[1]).not.toBe(first.blocks[1]);
  });

  it("always adds up, in whole seconds, whatever the sets and moves", () => {
    const stations = fc.constantFrom("", "rack", "turf lane");
    const lines = fc.array(anyScheme.map(printSetLine), { maxLength: 4 });
    fc.assert(fc.property(fc.array(fc.tuple(lines, stations, fc.option(fc.double({ min: 0, max: 30, noNaN: true }))), { maxLength: 5 }), fc.double({ min: 0, max: 120, noNaN: true }), (rows, seconds) => {
      const clock = gymClock(episode(...rows.map(([texts, station, minutes]) => block("exercise", texts, { station, minutes }))), () => seconds);
      for (const one of clock.blocks) {
        expect(one.parts.reduce((sum, part) => sum + part.seconds, 0)).toBe(one.seconds);
        for (const part of one.parts) expect(Number.isInteger(part.seconds) && part.seconds > 0).toBe(true);
        expect(one.unread).toEqual([]);
      }
      expect(clock.blocks.reduce((sum, one) => sum + one.seconds, 0)).toBe(clock.seconds);
    }), { numRuns: 200 });
  });
});
