import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, emptyEpisode, newLine, type Block } from "../../../../shared/episode";
import { filmRows, logLines } from "../../../../shared/exports/shot-list/rows";
import { shootPlan } from "../../../../shared/shoot-plan";
import { plannedSets, type PlannedSet } from "../../../../shared/training";

function block(shots: readonly string[], sets: readonly string[] = [], ramps: readonly string[] = []): Block {
  const newId = countingIds("r-");
  return emptyBlock(newId, "exercise", {
    sets: [...ramps.map((text) => ({ id: newId(), role: "ramp-up" as const, text })), ...sets.map((text) => ({ id: newId(), role: "working" as const, text }))],
    lines: shots.map((text) => newLine(newId, "shot", text)),
  });
}
function rowsOf(made: Block, cameras = 1) {
  const one = emptyEpisode(countingIds("e-"), { blocks: [made] });
  const shoot = shootPlan({ ...one, session: { ...one.session, cameras } }).blocks[0] ?? expect.fail("no block");
  return filmRows(shoot, plannedSets(made), "kg", cameras);
}

describe("filmRows", () => {
  it("lists ramp-up sets, then working sets, each with the mark that films it and what must be seen", () => {
    const rows = rowsOf(block(["Side, full, set 2, 20 s: the whole arm path"], ["2 x 8 @ 22 kg each hand, rest 90 s"], ["1 x 8 @ 12 kg each hand"]));
    expect(rows.map(({ label, under, title, see }) => ({ label, under, title, see }))).toEqual([
      { label: "Ramp", under: "12 kg each hand", title: "", see: ["Nothing new to film from A: keep the camera running for a spare take."] },
      { label: "Set 1", under: "22 kg each hand", title: "", see: ["Nothing new to film from A: keep the camera running for a spare take."] },
      { label: "Set 2", under: "22 kg each hand", title: "A, side, full", see: ["20 s: the whole arm path"] },
    ]);
  });

  it("numbers ramp-up sets when there are several, and films the one that is meant", () => {
    const rows = rowsOf(block(["Front, full, ramp-up set 2: the start position"], ["1 x 5 @ 60 kg"], ["1 x 5 @ 30 kg", "1 x 3 @ 45 kg"]));
    expect(rows.map(({ label, title }) => [label, title])).toEqual([["Ramp 1", ""], ["Ramp 2", "A, front, full"], ["Set 1", ""]]);
  });

  it("moves the camera in the rest and says how much of it that takes", () => {
    const rows = rowsOf(block(["Side, full, set 1: arm path", "Rear, medium, set 2: shoulder blades"], ["2 x 8 @ 20 kg, rest 90 s"]));
    expect(rows[0]?.then).toBe("Then move the camera to B: 45 s of the 90 s rest.");
    expect(rows[1]?.then).toBeNull();
  });

  it("says when the rest is too short for the move", () => {
    const rows = rowsOf(block(["Side, full, set 1: arm path", "Rear, medium, set 2: shoulder blades"], ["2 x 8 @ 20 kg, rest 30 s"]));
    expect(rows[0]?.then).toBe("Then move the camera to B: 45 s, 15 s more than the 30 s rest.");
  });

  it("names the mark of the next filmed set, not of the next shot line", () => {
    const rows = rowsOf(block(["Front, full, set 3: knees", "Side, full, set 1: back", "Rear, full, set 2: heels"], ["3 x 8 @ 20 kg, rest 90 s"]));
    expect(rows.map(({ then }) => then)).toEqual(["Then move the camera to C: 45 s of the 90 s rest.", "Then move the camera to A: 45 s of the 90 s rest.", null]);
  });

  it("keeps the camera running where no shot is planned at all", () => {
    expect(rowsOf(block([], ["1 x 8 @ 20 kg"])).map(({ title, see }) => [title, ...see])).toEqual([["", "No shot planned: keep the camera running for a spare take."]]);
  });

  it("moves both of two cameras when the next set is filmed from two new marks", () => {
    const made = block(["Side, full, set 1: back", "Front, full, set 1: knees", "Rear, full, set 2: heels", "Three-quarter, full, set 2: face"], ["2 x 8 @ 20 kg, rest 90 s"]);
    expect(rowsOf(made, 2)[0]?.then).toBe("Then move camera 1 to C and camera 2 to D: 90 s of the 90 s rest.");
    expect(rowsOf(made, 2)[1]?.title).toBe("Camera 1: C, rear, full  +  Camera 2: D, three-quarter, full");
    expect(rowsOf(made)[0]?.then).toBe("Then move the camera to C: 45 s of the 90 s rest.");
  });

  it("gives both angles of one set to two cameras, each with its own letter", () => {
    const [first] = rowsOf(block(["Side, full, set 1, 10 s: back shape", "Front, full, set 1, nice: knees"], ["1 x 8 @ 20 kg"]), 2);
    expect(first?.title).toBe("Camera 1: A, side, full  +  Camera 2: B, front, full");
    expect(first?.see).toEqual(["A, 10 s: back shape", "B, nice to have: knees"]);
  });

  it("puts demonstrations first, gives free sets to shots for any set and inserts, and says last what no set films and why", () => {
    const rows = rowsOf(block(["Side, full, set 7: too far", "Insert, 6 s, nice: grip", "Front, full: face", "Demo, side: slowly"], ["2 x 8 @ 20 kg"]));
    expect(rows.map(({ label, under, title, see }) => [label, under, title, ...see])).toEqual([
      ["Demo", "no load", "D, side", "Slowly"],
      ["Set 1", "20 kg", "C, front, full", "Face"],
      ["Set 2", "20 kg", "B, insert, close", "Nice to have, 6 s: grip"],
      ["Lost", "must", "No set films A", "Too far", "There is no set 7. Film it apart if you can."],
    ]);
  });

  it("gives blocks without sets one row a shot", () => {
    expect(rowsOf(block(["Front, full, 20 s: circles", "Side, full, 12 s: squats"])).map(({ label, under, title, log }) => [label, under, title, log.length])).toEqual([
      ["Shot 1", "20 s", "A, front, full", 0], ["Shot 2", "12 s", "B, side, full", 0],
    ]);
  });

  it("shows every shot once or more, and nothing for a block without shots and sets", () => {
    expect(rowsOf(block([]))).toEqual([]);
    const [only] = rowsOf(block(["just words"]));
    expect(only).toMatchObject({ label: "Shot", title: "A, any angle", see: ["Just words"] });
  });
});

describe("logLines", () => {
  const set = (work: string, load: string): PlannedSet => ({ number: 1, role: "working", line: "x", workSeconds: 30, changeSeconds: 0, restSeconds: 60, work, load });
  const words = (made: ReturnType<typeof logLines>) => made.map((line) => line.map((part) => (typeof part === "string" ? part : "__")).join(" "));

  it.each([
    ["8 to 10 reps", "22 kg each hand", ["__ kg __ reps"]],
    ["40 m", "24 kg", ["__ kg __ m"]],
    ["45 s", "bodyweight", ["__ s"]],
    ["12 reps each side", "10 kg", ["left __ kg __ reps", "right __ kg __ reps"]],
    ["20 m each side", "10 kg", ["left __ kg __ m", "right __ kg __ m"]],
    ["as many as possible in 60 s", "", ["__ kg __ reps"]],
  ])("logs %s at %s", (work, load, expected) => {
    expect(words(logLines(set(work, load), "kg"))).toEqual(expected);
  });
});
