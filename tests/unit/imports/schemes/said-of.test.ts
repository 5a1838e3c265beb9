import { describe, expect, it } from "vitest";
import { namesIn } from "../../../../shared/imports/names/find";
import { NAMES } from "../../../../shared/imports/names/lexicon";
import { saidOf } from "../../../../shared/imports/schemes/said-of";
import type { Part } from "../../../../shared/imports/order/speech";
import { wordsOfText } from "../../../../shared/imports/source/words";

const part = (title: string): Part => ({ kind: "exercise", title, exercise: NAMES.find((name) => name.title === title)?.exercise ?? null, from: 0, to: 1, named: 0, begins: { turn: 0, name: 0 }, said: title.toLowerCase(), pair: null });
const exercises = ["Hammer curl", "Lying triceps extension", "Face pull"].map((title) => ({ part: part(title), turn: 0, at: 0 }));

/** The title that a figure is said of. @param said - the figure is the word in stars */
function heard(said: string): string | null {
  const words = wordsOfText(said.replaceAll("*", ""));
  const at = said.split(" ").findIndex((word) => word.startsWith("*"));
  const statements = [{ says: { sets: 3 }, rank: "part" as const, about: "working" as const, either: false, remark: null, from: at, to: at, sentence: 0 }];
  const places = saidOf({ exercises, statements, words }, 0, namesIn(words, new Set()));
  return places === null ? null : (exercises[places[0] ?? -1]?.part.title ?? null);
}

describe("a figure with the name of its exercise right behind it", () => {
  it.each<readonly [said: string, title: string | null]>([
    ["i've got the *12s* for the hammer curls and another bar", "Hammer curl"],
    ["so *four* sets of face pulls sorry for that", "Face pull"],
    ["*twelve* kilos on the hammer curls", "Hammer curl"],
    // Told of a list, of no exercise of the session, of a place, and of nothing.
    ["*three* sets for the hammer curls and the face pulls", null],
    ["*three* sets of lunges", null],
    ["*ten* reps on the bench", null],
    ["*ten* reps and then the hammer curls", null],
  ])("%s", (said, title) => {
    expect(heard(said)).toBe(title);
  });
});

describe("reps of a list with the names right behind them", () => {
  it.each<readonly [said: string, titles: readonly (string | null)[]]>([
    ["five rounds of *20* hammer curls *30* face pulls and *12* skull crushers", ["Hammer curl", "Face pull", "Lying triceps extension"]],
    ["and then *20* hammer curls and you rest", [null]],
    ["*20* hammer curls and when that is done we rest and then *30* face pulls", [null, null]],
  ])("%s", (said, titles) => {
    const words = wordsOfText(said.replaceAll("*", ""));
    const statements = said.split(" ").flatMap((word, at) => (word.startsWith("*") ? [{ says: { repsMin: 20, repsMax: 20 }, rank: "part" as const, about: "working" as const, either: false, remark: null, from: at, to: at, sentence: 0 }] : []));
    const places = statements.map((_, at) => saidOf({ exercises, statements, words }, at, namesIn(words, new Set())));
    expect(places.map((own) => (own === null ? null : exercises[own[0] ?? -1]?.part.title))).toEqual(titles);
  });
});
