import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { transcriptsIn } from "../../../../shared/imports/learning/read";
import { digestOf } from "../../../../shared/imports/learning/training";
import { readMarked } from "../../../../shared/imports/learning/transcript";
import weights from "../../../../shared/imports/learning/weights.json";
import { ROLES } from "../../../../shared/imports/roles/tagger";
import heard from "../../../../shared/imports/listener/weights.json";

const ROOT = new URL("../../../../shared/imports/learning/corpus/", import.meta.url).pathname;
const files = readdirSync(ROOT).filter((name) => name.endsWith(".txt")).sort().flatMap((name) => transcriptsIn(readFileSync(ROOT + name, "utf8")));

describe("the weights of the readers of speech", () => {
  it("belong to the transcripts as they are (else: node electron/start-up/speech-readers.mjs)", () => {
    expect([weights.digest, heard.digest]).toEqual([digestOf(files), digestOf(files)]);
  });

  it("tell of as many roles as there are", () => {
    expect(heard.role[1]?.weight.rows).toBe(ROLES.length);
  });

  it("were learned from transcripts that all mark a figure or a turn", () => {
    expect(files.filter((file) => readMarked(file).roles.size + readMarked(file).turns.length === 0)).toEqual([]);
  });
});

describe("readMarked", () => {
  it("takes marks, turns and silences out of the words", () => {
    const { words, roles, turns } = readMarked("rate: 4\n---\nhello <goblet-squat> goblet squats three/s sets of ten/r {12} and/or rest\n");
    expect(words.map(({ plain }) => plain).join(" ")).toBe("hello goblet squats three sets of ten and/or rest");
    expect([...roles]).toEqual([[3, "sets"], [6, "reps"]]);
    expect(turns).toEqual([{ at: 1, to: "goblet-squat" }]);
    expect(words[7]?.pause).toBe(12);
  });

  it("knows which figures are told once for several exercises", () => {
    const { roles, forSeveral } = readMarked("rate: 4\n---\nthree/as rounds of ten/r as many/amrap as you can a minute/at off\n");
    expect([...roles]).toEqual([[0, "sets"], [3, "reps"], [5, "amrap"], [10, "rest"]]);
    expect([...forSeveral]).toEqual([0, 10]);
  });
});
