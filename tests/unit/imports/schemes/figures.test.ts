import { describe, expect, it } from "vitest";
import { tokensOf } from "../../../../shared/imports/schemes/figures";
import { wordsOfText } from "../../../../shared/imports/source/words";

/** Numbers as coaches say them and caption machines write them. Common practice, no source. */
const SAID: readonly (readonly [said: string, read: string])[] = [
  ["went to three fifteen for two", "went to 315 for 2"],
  ["at three fifteen and rest", "at 315 and rest"],
  ["leg press at seven twenty for eight", "leg press at 720 for 8"],
  ["with three fifteen pound bells", "with 3 15 pound bells"],
  ["three fifteen second holds", "3 15 second holds"],
  ["at four fifteen for two", "at 415 for 2"],
  ["we met at six thirty and rest", "we met at 6 30 and rest"],
  ["3 hundred pounds", "300 pounds"],
  ["sets of three ninety kilos", "sets of 3 90 kilos"],
  ["hundred kilos", "100 kilos"],
  ["a hundred and ten kilos", "110 kilos"],
  ["two hundred and five", "205"],
  ["on a hundred and 12 reps", "on 100 and 12 reps"],
  ["a hundred and twelve reps", "100 and 12 reps"],
  ["one twelve kilo weight", "1 12 kilo weight"],
  ["one twelve kilos", "112 kilos"],
  ["one hundred five", "105"],
  ["sets of five ninety kilos", "sets of 5 90 kilos"],
  ["the third one fifty five kilos", "the third 1 55 kilos"],
  ["at one fifty five", "at 155"],
  ["twenty two point fives", "22.5"],
  ["twenty two and a halfs", "22.5"],
  ["10 - 12 reps", "10 to 12 reps"],
  ["at eighty two minutes rest", "at 80 2 minutes rest"],
  ["at one twenty three minutes rest", "at 120 3 minutes rest"],
  ["at a hundred three minutes rest", "at 100 3 minutes rest"],
  ["it takes twenty five minutes", "it takes 25 minutes"],
  ["2 and 1/2 minutes", "2.5 minutes"],
  ["i rest one minute and a half", "i rest 1.5 minutes"],
  ["one and a half minute rest", "1.5 minutes rest"],
  ["sets of twelve minute and a half", "sets of 12 90 seconds"],
  ["minute and half of rest", "90 seconds of rest"],
  ["with a minute fifteen in between", "with 75 seconds between"],
  ["with a minute and fifteen between", "with 75 seconds between"],
  ["rest a minute and fifteen more", "rest 1 minute and 15 more"],
  ["two minutes thirty seconds rest", "150 seconds rest"],
  ["rest a minute twelve reps", "rest 1 minute 12 reps"],
  ["rest a minute fifteen reps", "rest 1 minute 15 reps"],
  ["both of the sets", "2 sets"],
  ["sixty kilos for five seventy for four eighty for three", "60 kilos for 5 70 for 4 80 for 3"],
  ["today i went for one thirty five and", "today i went for 135 and"],
  ["we've only got the one twelve kilo so", "we've got the 1 12 kilo so"],
];

describe("numbers in speech", () => {
  it.each(SAID)("%s", (said, read) => {
    const words = wordsOfText(said);
    expect(tokensOf(words, 0, words.length, new Set(), new Set()).map(({ text }) => text).join(" ")).toBe(read);
  });
});
