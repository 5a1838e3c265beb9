import { describe, expect, it } from "vitest";
import { countingIds, emptyBlock, emptyEpisode, newLine, type Block, type SetRole } from "../../../../../shared/episode";
import { floorOf } from "../../../../../shared/filming";
import { shootPlan, type ShootBlock } from "../../../../../shared/shoot-plan";
import { coverageRows } from "../../../../../renderer/places/shoot/coverage-rows";
import { markWords, tiltInWords } from "../../../../../shared/filming";
import { lineInWords, stepsSaid } from "../../../../../renderer/places/shoot/mark-words";

const id = countingIds("p");
const exercise = (sets: readonly (readonly [SetRole, string])[], shots: readonly string[]): Block =>
  emptyBlock(id, "exercise", { exercise: "chest-supported-row", sets: sets.map(([role, text]) => ({ id: id(), role, text })), lines: shots.map((text) => newLine(id, "shot", text)) });
function planned(block: Block, cameras = 1): ShootBlock {
  const one = emptyEpisode(id, { blocks: [block] });
  return shootPlan({ ...one, session: { ...one.session, cameras } }).blocks[0] ?? expect.fail("no block");
}
const row = exercise([["ramp-up", "1 x 8 @ 12 kg each hand"], ["working", "3 x 8-10 @ 22 kg each hand, rest 90 s"]], ["Side, full, set 2, 20 s: the whole arm path", "Rear, medium, set 3, 15 s: shoulder blades", "Insert, 6 s, nice: grip"]);

describe("coverageRows", () => {
  const rows = coverageRows(planned(row), 1);

  it("lists ramp-up sets, then working sets, with what is done in each", () => {
    expect(rows.map(({ set, work }) => [set.name, work])).toEqual([
      ["Ramp-up 1", "8 reps, 12 kg each hand"], ["Set 1", "8 to 10 reps, 22 kg each hand"], ["Set 2", "8 to 10 reps, 22 kg each hand"], ["Set 3", "8 to 10 reps, 22 kg each hand"],
    ]);
  });

  it("puts each shot under its mark and on its set, and says where the camera only stands", () => {
    expect(rows.map(({ cells }) => cells.map(({ cameras, shots }) => `${cameras.join()}${shots.map(({ subject }) => ` ${subject}`).join("")}`).join("|"))).toEqual([
      "||1 grip", "||1", "1 the whole arm path||", "|1 shoulder blades|",
    ]);
  });

  it("says before which set the camera moves and whether the rest holds it", () => {
    expect(rows.map(({ move }) => move?.words ?? "")).toEqual(["", "", "Camera to A: 45 s of the 90 s rest.", "Camera to B: 45 s of the 90 s rest."]);
    const short = exercise([["working", "2 x 8, rest 30 s"]], ["Side, set 1: a", "Front, set 2: b", "Rear, set 1: c", "Low, set 2: d"]);
    expect(coverageRows(planned(short), 1)[1]?.move).toEqual({ fits: false, words: "Camera to B: 45 s, and the rest is 30 s: costs 0:15." });
    expect(coverageRows(planned(short, 2), 2)[1]?.move?.words).toBe("Camera 1 to B and camera 2 to D: 90 s, and the rest is 30 s: costs 1:00.");
  });

  it("says between runs, where nobody rests, only what a move takes", () => {
    const runs = emptyBlock(id, "warm-up", { minutes: 8, lines: ["Front, full, 20 s: circles", "Side, full, 12 s: squats to a box"].map((text) => newLine(id, "shot", text)) });
    expect(coverageRows(planned(runs), 1).map(({ move }) => move?.words)).toEqual([undefined, "Camera to B: 45 s."]);
    const short = emptyBlock(id, "opening", { minutes: 1, lines: ["Front, medium, 12 s: hello", "Insert, 4 s: strap"].map((text) => newLine(id, "shot", text)) });
    expect(coverageRows(planned(short), 1)[1]?.move).toEqual({ fits: false, words: "Camera to B: 45 s, and there are 44 s before it: costs 0:01." });
  });

  it("has one row for a block without sets", () => {
    expect(coverageRows(planned(emptyBlock(id, "opening", { lines: [newLine(id, "shot", "Front, medium: hello")] })), 1).map(({ set }) => set.name)).toEqual(["The whole block"]);
  });
});

describe("marks in words", () => {
  it("names a mark of which little is known", () => expect(markWords({ angle: null, size: null })).toBe("any angle"));
  it("says what the dotted line is for where more than details is filmed", () => {
    const line = (shots: readonly string[]): string => {
      const block = exercise([["working", "2 x 8"]], shots);
      return lineInWords(floorOf(emptyEpisode(id, { blocks: [block] }), block));
    };
    expect(line(["Side, full: a"])).toBe("Dotted: the 180° line. Cameras on it or to its left keep left and right in every cut.");
    expect(line(["Insert: grip"])).toBe("");
  });
  it("says steps and tilt", () => {
    expect([0.5, 1, 2.5].map(stepsSaid)).toEqual(["half a step", "1 step", "2½ steps"]);
    expect([0, -29, 12].map(tiltInWords)).toEqual(["level", "29° down", "12° up"]);
  });
});
