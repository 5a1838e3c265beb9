import { describe, expect, it } from "vitest";
import { namesIn } from "../../../../shared/imports/names/find";
import { NAMES } from "../../../../shared/imports/names/lexicon";
import type { Part } from "../../../../shared/imports/order/speech";
import { isOfOne } from "../../../../shared/imports/schemes/borrowed";
import { withoutChanges } from "../../../../shared/imports/schemes/by-how-much";
import type { Ordered } from "../../../../shared/imports/schemes/compose";
import { cameTo } from "../../../../shared/imports/schemes/came-to";
import { listedFirst } from "../../../../shared/imports/schemes/listed";
import { isOneBell } from "../../../../shared/imports/schemes/one-bell";
import { ofToday } from "../../../../shared/imports/schemes/past";
import { toldOnce } from "../../../../shared/imports/schemes/retold";
import { marked, valuesOf } from "../marked";

describe("what was done is told again", () => {
  it.each<readonly [string, readonly number[]]>([
    ["70k now 8r that was 70k for 8r and that moved", [70, 8]],
    ["70k for 8r again 70k for 8r", [70, 8, 70, 8]],
    ["70k for 8r that was 70k for 6r", [70, 8, 70, 6]],
    ["that's 70k for 8r", [70, 8]],
    // A sum is no set, nor is the weight told again.
    ["first set 9r second 7r third 5r and that's 21r push ups", [9, 7, 5]],
    ["first set 9r second 7r and then 16r", [9, 7, 16]],
    ["up to 100k and that 100r is for all 4s sets", [100, 4]],
    ["at 12k kilos that 12r is plenty", [12, 12]],
  ])("%s", (said, wanted) => {
    const { words, own } = marked(said);
    expect(valuesOf(toldOnce(own, words))).toEqual(wanted);
  });
});

describe("weights of another day", () => {
  it.each<readonly [string, readonly number[]]>([
    ["worked up to 140k for 1r last week so today only 5s of 3r at 110k", [5, 3, 110]],
    ["last week i did 60k today it's 65k for 8r", [65, 8]],
    ["had it on 45k last week it was 40k and 3s of 15r", [45, 3, 15]],
    ["did 60k last week so a lot", [60]],
  ])("%s", (said, wanted) => {
    const { words, own } = marked(said);
    expect(valuesOf(ofToday(own, words))).toEqual(wanted);
  });
});

describe("by how much a weight changed", () => {
  it.each<readonly [string, readonly number[]]>([
    ["80k for 9r so i took 20k kilos off and did 12r at 60k", [80, 9, 12, 60]],
    ["60k for 8r that's 5k kilos more than last week", [60, 8]],
    ["i took 20k kilos off and did 12r", [20, 12]],
    ["60k kilos more or less for 8r", [60, 8]],
    ["270k for 8r last week 6 so we are up 2r reps", [270, 8]],
    ["sit down and come back up 12r reps", [12]],
  ])("%s", (said, wanted) => {
    const { words, own } = marked(said);
    expect(valuesOf(withoutChanges(own, words))).toEqual(wanted);
  });
});

describe("what as many as one can came to", () => {
  it.each<readonly [string, readonly number[]]>([
    ["just 1s hold 0m as long as you can i got 55t seconds", [1, 55]],
    ["just 1s hold 0m as long as you can", [1, 0]],
    ["2s sets as many as you can 0m in 55t seconds", [2, 0, 55]],
    ["1s set to 0m failure and i got 16r which", [1, 16]],
    ["3s sets 0m as many as i can first set 15r second 12r third 10r", [3, 15, 12, 10]],
    ["3s sets 0m as many as i can today i got 15r", [3, 0, 15]],
  ])("%s", (said, wanted) => {
    const { words, own } = marked(said);
    expect(valuesOf(cameTo(own, words))).toEqual(wanted);
  });
});

describe("one weight, or one in each hand", () => {
  it.each<readonly [string, boolean]>([
    ["with a 16k kilo kettlebell", true],
    ["i'm holding one 20k pound dumbbell", true],
    ["with a 16k kilo kettlebell in each hand", false],
    ["with the 16k kilo dumbbells", false],
    ["with 16k kilos", false],
    ["a 20k kilo barbell", false],
  ])("%s", (said, wanted) => {
    const { words, own } = marked(said);
    expect(isOneBell(own, words)).toBe(wanted);
  });
});

const part = (title: string): Part => ({ kind: "exercise", title, exercise: NAMES.find((name) => name.title === title)?.exercise ?? null, from: 0, to: 1, named: 0, begins: { turn: 0, name: 0 }, said: title.toLowerCase(), pair: null });
const TITLES = ["Hip thrust", "Lat pulldown", "Face pull"];

describe("a session told as a list before it is done", () => {
  it.each<readonly [string, readonly (readonly [number, number])[]]>([
    ["hip thrusts 4s of 8r lat pulldowns 3s of 10r then face pulls 2s of 15r and rest", [[0, 0], [1, 0], [2, 1], [3, 1], [4, 2], [5, 2]]],
    // Two are no list, another order is none of this session, and far from a name a figure is of nothing.
    ["hip thrusts 4s of 8r and lat pulldowns 3s of 10r", []],
    ["face pulls 4s of 8r lat pulldowns 3s of 10r hip thrusts 2s", []],
    ["hip thrusts 4s lat pulldowns 3s face pulls and when i was a good deal younger than today 20r", []],
  ])("%s", (said, wanted) => {
    const { words, own } = marked(said);
    const exercises = TITLES.map((title) => ({ part: part(title), turn: 1000, at: 1000 }));
    expect([...listedFirst({ exercises, statements: own, words }, namesIn(words, new Set()))]).toEqual(wanted);
  });
});

describe("a number of sets told of one exercise", () => {
  it.each<readonly [string, boolean]>([
    ["3s lots of 6r today", true],
    ["just 2s sets of this one", true],
    ["and we go round it 4s times", false],
  ])("%s", (said, wanted) => {
    const { words, own } = marked(said);
    const exercises = [{ part: part("Hip thrust"), turn: 0, at: 0 }];
    expect(isOfOne({ exercises, statements: own, words }, own[0] as Ordered)).toBe(wanted);
  });
});
