import { describe, expect, it } from "vitest";
import { namesIn } from "../../../../shared/imports/names/find";
import type { Scene } from "../../../../shared/imports/owners/scene";
import { heldByAll } from "../../../../shared/imports/schemes/for-all";
import { wordsOfText } from "../../../../shared/imports/source/words";
import type { Scheme } from "../../../../shared/training";

const partOf = (title: string) => ({ kind: "exercise" as const, title, exercise: null, from: 0, to: 1, named: 0, begins: { turn: 0, name: 0 }, said: title, pair: null });

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
  const scene: Scene = { exercises: turns.map((turn) => ({ part: partOf(plain[turn] ?? ""), turn, at: turn })), statements: [statement(at, 60), ...taken.map((place) => statement(turns[place] ?? 0, 90))], words: wordsOfText(plain.join(" ")) };
  const home = turns.findLastIndex((turn) => turn <= at);
  return heldByAll(scene, [home < 0 ? [] : [home], ...taken.map((place) => [place])], namesIn(scene.words, new Set()))[0] ?? [];
}

describe("figures that are said of everything", () => {
  it.each<readonly [said: string, taken: readonly number[], places: readonly number[]]>([
    ["| squats and i rest *sixty seconds between every set of everything | rows | presses", [], [0, 1, 2]],
    ["i take *sixty seconds after everything | squats | rows | presses", [], [0, 1, 2]],
    ["| squats | rows and rest *sixty seconds for every exercise | presses", [], [0, 1, 2]],
    // Those that are still to come, and those that have their own.
    ["| squats | rows from here on it's *sixty seconds on everything | presses", [], [1, 2]],
    ["| squats | rows it's *sixty seconds on everything else | presses", [0], [1, 2]],
    ["| squats *sixty seconds in between and that's for the whole thing | rows | presses", [], [0, 1, 2]],
    ["| squats the rest of it's all on *90 seconds i won't say it again except the last one's free | rows | presses", [], [0, 1]],
    ["| squats and it stays *90 for the next ones too | rows | presses", [], [0, 1, 2]],
    ["| squats *two minutes on the next one as well | rows | presses", [], [0, 1]],
    ["| squats *ninety seconds on the last one too | rows | presses", [], [0, 2]],
    ["| squats *a minute the whole way except for the planks | planks | presses", [], [0, 2]],
    // Something is left out; nothing is said of all; another number stands between.
    ["| squats rest *sixty seconds on everything but that may change | rows | presses", [], [0]],
    ["| squats rest *sixty seconds on everything except the last | rows | presses", [], [0, 1]],
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
