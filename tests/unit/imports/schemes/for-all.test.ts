import { describe, expect, it } from "vitest";
import type { Scene } from "../../../../shared/imports/owners/scene";
import { heldByAll } from "../../../../shared/imports/schemes/for-all";
import { wordsOfText } from "../../../../shared/imports/source/words";
import type { Scheme } from "../../../../shared/training";

const part = { kind: "exercise" as const, title: "Row", exercise: null, from: 0, to: 1, named: 0, begins: { turn: 0, name: 0 }, said: "row", pair: null };

/** For which of three exercises a rest of a minute holds. @param said - "|" begins an exercise, "*" marks the figure; it is heard for the one it is said in */
function held(said: string, field: keyof Scheme = "restSeconds", taken: readonly number[] = []): readonly number[] {
  const pieces = said.split(" ");
  const turns: number[] = [];
  const plain: string[] = [];
  let at = -1;
  for (const piece of pieces) {
    if (piece === "|") turns.push(plain.length);
    else {
      if (piece.startsWith("*")) at = plain.length;
      plain.push(piece.replace("*", ""));
    }
  }
  const statement = (from: number, value: number): Scene["statements"][number] => ({ says: { [field]: value }, rank: "extra", about: "working", either: false, remark: null, from, to: from, sentence: 0 });
  const scene: Scene = { exercises: turns.map((turn) => ({ part, turn, at: turn })), statements: [statement(at, 60), ...taken.map((place) => statement(turns[place] ?? 0, 90))], words: wordsOfText(plain.join(" ")) };
  const home = turns.findLastIndex((turn) => turn <= at);
  return heldByAll(scene, [home < 0 ? [] : [home], ...taken.map((place) => [place])])[0] ?? [];
}

describe("figures that are said of everything", () => {
  it.each<readonly [said: string, taken: readonly number[], places: readonly number[]]>([
    ["| squats and i rest *sixty seconds between every set of everything | rows | presses", [], [0, 1, 2]],
    ["i take *sixty seconds after everything | squats | rows | presses", [], [0, 1, 2]],
    ["| squats | rows and rest *sixty seconds for every exercise | presses", [], [0, 1, 2]],
    // Those that are still to come, and those that have their own.
    ["| squats | rows from here on it's *sixty seconds on everything | presses", [], [1, 2]],
    ["| squats | rows it's *sixty seconds on everything else | presses", [0], [1, 2]],
    // Something is left out; nothing is said of all; another number stands between.
    ["| squats rest *sixty seconds on everything except the last | rows | presses", [], [0]],
    ["| squats rest *sixty seconds | rows | presses", [], [0]],
    ["| squats rest *sixty seconds and do ten of everything | rows | presses", [], [0]],
  ])("%s", (said, taken, places) => {
    expect(held(said, "restSeconds", taken)).toEqual(places);
  });

  it("holds for numbers of sets as well, and for no other figure", () => {
    expect(held("| squats *three sets of everything | rows | presses", "sets")).toEqual([0, 1, 2]);
    expect(held("| squats *ten reps on everything | rows | presses", "repsMin")).toEqual([0]);
  });
});
