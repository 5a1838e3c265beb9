import { describe, expect, it } from "vitest";
import { unitOf } from "../../../../shared/imports/schemes/unit";
import type { Statement } from "../../../../shared/imports/schemes/statement";
import { wordsOfText } from "../../../../shared/imports/source/words";

const weighing = (...values: number[]): Statement[] => values.map((value) => ({ says: { load: { value, unit: "kg" } }, rank: "extra", about: "working", either: false, remark: null, from: 0, to: 0 }));

describe("the unit of weights told without one", () => {
  it.each([
    { name: "the one that is said", said: "take twenty pounds in each hand", loads: [20], unit: "lb" },
    { name: "the one that is said more often", said: "two hundred pounds that is ninety kilos so ninety kilos on the bar", loads: [90], unit: "kg" },
    { name: "kilos by the bells, though a pound is spoken of", said: "it's only a pound in the shop take the sixteen and then the twenty four", loads: [16, 24], unit: "kg" },
    { name: "kilos where nothing tells", said: "take forty on the bar", loads: [40], unit: "kg" },
    { name: "pounds by the plates", said: "take one thirty five then two twenty five", loads: [135, 225], unit: "lb" },
    { name: "pounds by the speaker", said: "alright y'all grab the tens we're gonna do curls", loads: [10], unit: "lb" },
    { name: "kilos by the bells", said: "take the sixteen and then the twenty four", loads: [16, 24], unit: "kg" },
    { name: "kilos by the speaker, of a weight that both know", said: "lovely take the twenty fives and mind your bum mate", loads: [25], unit: "kg" },
    { name: "words that every object knows tell nothing", said: "constructor toString take the ten", loads: [10], unit: "kg" },
  ])("$name", ({ said, loads, unit }) => {
    expect(unitOf(weighing(...loads), wordsOfText(said))).toBe(unit);
  });
});
