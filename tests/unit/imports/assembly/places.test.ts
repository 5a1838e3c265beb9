import { describe, expect, it } from "vitest";
import { toldAgain } from "../../../../shared/imports/assembly/again";
import { toldInTurn } from "../../../../shared/imports/assembly/in-turn";
import { inPairs } from "../../../../shared/imports/assembly/pairs";
import { weightsInTurn } from "../../../../shared/imports/assembly/weights-in-turn";
import { marked, valuesOf } from "../marked";

/** Places as signs: [ begins a line, + goes on with it, * holds for all lines, - is an aside. */
const placesIn = (signs: string): number[] => [...signs].map((sign) => "-[+*".indexOf(sign));
const signsOf = (places: readonly number[]): string => places.map((place) => "-[+*"[place]).join("");

describe("sets told as weight and reps in turn", () => {
  it.each<readonly [said: string, heard: string, wanted: string]>([
    ["first set was 12r at 20k second was 10r at 25k then 8r at 30k", "[+[[+[", "[+[+[+"],
    ["30k for 15r and 35k for 15r and 40k for 12r", "[+++++", "[+[+[+"],
    // One pair is none, nor is what stands nearer to the next.
    ["12r at 20k and that was it", "[+", "[+"],
    ["20k it was all right and i did my usual number which is 12r at 30k", "[[+", "[[+"],
    ["60k and i took my time until i was ready 12r 70k and i took my time again until 10r", "[[+[", "[[+["],
    // Several sets are told otherwise.
    ["3s of 12r at 20k 2s of 10r at 30k", "[++[++", "[++[++"],
  ])("%s", (said, heard, wanted) => {
    expect(signsOf(inPairs(marked(said).own, placesIn(heard)))).toBe(wanted);
  });
});

describe("as many reps again", () => {
  it.each<readonly [said: string, heard: string, wanted: string]>([
    ["40k i did 12r then 12r again", "[++", "[+["],
    ["360k and i did 10r and then another 10r", "[++", "[+["],
    ["80k for 9r then 7r then 6r and 6r", "[+[[+", "[+[[["],
    // Counted, sided, of no weight, or the same telling.
    ["40k 2s of 12r then 12r again", "[+++", "[+++"],
    ["40k 12r on the left then another 12r on the right", "[++", "[++"],
    ["12r then 12r again", "[+", "[+"],
    ["40k for 12r so 12r nice ones", "[++", "[++"],
    ["20k for 12r then 25k and i got 7r 7r and that was it", "[+[++", "[+[++"],
  ])("%s", (said, heard, wanted) => {
    const { own, words } = marked(said);
    expect(signsOf(toldAgain(own, placesIn(heard), words))).toBe(wanted);
  });
});

describe("sets told by their place in the row", () => {
  it.each<readonly [said: string, heard: string, wanted: string]>([
    ["105k the idea was 3s of 5r so first one 5r second one 5r and the third 4r", "[++++[", "[--[[["],
    ["it was 8r on the first one 8r on the second one 8r on the third and then i got 8r", "[+++", "[[[["],
    ["first set 80k for 10r then second set 85k for 8r", "[+[+", "[+[+"],
    ["i wanted 3s sets of 20r and i got 20r 20r and 17r", "[++++", "--[[["],
    // Of more sets than are told the plan stays; one alone is no row.
    ["5s of 5r first one 5r second one 5r", "[+++", "[+++"],
    ["3s of 5r the first one 5r", "[++", "[++"],
  ])("%s", (said, heard, wanted) => {
    const { own, words } = marked(said);
    expect(signsOf(toldInTurn(own, placesIn(heard), words))).toBe(wanted);
  });
});

describe("weights that share one number of sets", () => {
  it.each<readonly [said: string, heard: string, wanted: string, sets: readonly number[]]>([
    ["3s sets of 12r the first set i took the 8k kilo one and then for second and third i took the 10k kilo one", "[++[", "-++[", [1, 2]],
    ["3s sets of 12r at 20k and on the last set i went up to 25k", "[++[", "-++[", [2, 1]],
    ["3s sets of 12r at 20k and then i went up to 25k", "[++[", "[++[", []],
    ["3s sets of 12r at 20k and the last set 20r at 15k", "[++[+", "[++[+", []],
    ["3s sets of 12r at 20k and the last set with 15k as 0m many as i could", "[++[+", "[++[+", []],
  ])("%s", (said, heard, wanted, sets) => {
    const { own, words } = marked(said);
    const told = weightsInTurn(own, placesIn(heard), words);
    expect(signsOf(told.places)).toBe(wanted);
    expect(told.own.flatMap(({ says }) => (says.load && says.sets !== undefined ? [says.sets] : []))).toEqual(sets);
    expect(valuesOf(told.own)).toEqual(valuesOf(own));
  });
});
