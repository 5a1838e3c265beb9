import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { syllablesOf } from "../../../shared/speech";
import { soundsOf } from "../../../shared/speech/pronunciation";
import { chooseWords } from "../../../shared/speech/pronunciation/choose";
import { consonantsBySpelling } from "../../../shared/speech/pronunciation/consonants";

describe("the table of pronunciations", () => {
  it("is what its script makes of the dictionary", async () => {
    const script = (await import(pathToFileURL(join(process.cwd(), "electron", "start-up", "pronunciation.mjs")).href)) as { pronunciationTable(): Promise<string> };
    expect(readFileSync(join(process.cwd(), "shared", "speech", "pronunciation", "table.json"), "utf8")).toBe(await script.pronunciationTable());
  });

  it.each([["colonel", 2], ["queue", 1], ["tongue", 1], ["society", 4], ["baseball", 2], ["grabbed", 1]])("knows what spelling hides: %s has %i", (word, count) => {
    expect(syllablesOf(word)).toBe(count);
  });
});

describe("choosing words for the table", () => {
  const sounds: Readonly<Record<string, readonly string[]>> = { bat: ["B AE1 T"], queueing: ["K Y UW1 IH0 NG"], odd: ["AA1 D AH0 L IH0"], fire: ["F AY1 ER0", "F AY1 R"] };
  const of = (word: string): readonly string[] => sounds[word] ?? [];

  it("keeps only what the rule gets wrong, by its sounds", () => {
    expect(chooseWords(["odd", "bat", "unknown", "odd", "fire"], of)).toEqual({ "3 2": "odd" });
  });

  it("does not care for the order of the words", () => {
    expect(chooseWords(["fire", "odd", "bat"], of)).toEqual(chooseWords(["odd", "bat", "fire"], of));
  });

  it("leaves trade words to the trade", () => {
    expect(chooseWords(["deadlift"], () => ["D EH1 D L IH1 F T ER0"])).toEqual({});
  });
});

describe("consonants by spelling", () => {
  it.each([
    ["squat", 4], ["breath", 3], ["knee", 1], ["wrist", 3], ["stretch", 4], ["night", 2], ["box", 3], ["away", 1], ["press", 3], ["half", 2],
    ["strengths", 7], ["angle", 3], ["singing", 3], ["lamb", 2], ["yes", 2], ["few", 2], ["", 0],
  ])("%s: %i", (word, count) => {
    expect(consonantsBySpelling(word)).toBe(count);
  });

  it("are never more than two a letter", () => {
    fc.assert(fc.property(fc.stringMatching(/^[a-z]{1,20}$/), (word) => {
      expect(consonantsBySpelling(word)).toBeLessThanOrEqual(2 * word.length);
      expect(consonantsBySpelling(word)).toBeGreaterThanOrEqual(0);
    }));
  });
});

describe("the sounds of a word", () => {
  it("add up over hyphens and do not mind case", () => {
    const [half, kneeling, both] = [soundsOf("half"), soundsOf("kneeling"), soundsOf("Half-Kneeling,")];
    expect(both).toEqual({ syllables: half.syllables + kneeling.syllables, consonants: half.consonants + kneeling.consonants });
  });

  it("stay the same however many other words were asked for", () => {
    const before = soundsOf("kettlebell");
    for (let n = 0; n < 25_000; n += 1) soundsOf(`w${n.toString(26).replace(/\d/g, "q")}`);
    expect(soundsOf("kettlebell")).toEqual(before);
  });
});
