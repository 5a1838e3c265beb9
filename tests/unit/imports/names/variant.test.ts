import { describe, expect, it } from "vitest";
import { namesIn } from "../../../../shared/imports/names/find";
import { variantOf } from "../../../../shared/imports/names/variant";
import { wordsOfText } from "../../../../shared/imports/source/words";

const CASES: readonly (readonly [said: string, id: string])[] = [
  ["romanian deadlifts with dumbbells", "dumbbell-romanian-deadlift"],
  ["romanian deadlifts and if you have no bar use dumbbells", "romanian-deadlift"],
  ["squats to the chair sit back", "squat-to-box"],
  ["squats feet a little wider than your hips", "bodyweight-squat"],
  ["squats eighty kilos on the bar", "back-squat"],
  ["push ups against the counter", "incline-push-up"],
  ["push ups on the floor", "push-up"],
  ["hip thrusts one dumbbell across your hips", "dumbbell-hip-thrust"],
  ["deadlifts with the kettlebell", "kettlebell-deadlift"],
];

describe("which kind of an exercise is meant", () => {
  it.each(CASES)("%s", (said, id) => {
    const words = wordsOfText(said);
    const mention = namesIn(words, new Set())[0];
    expect(mention).toBeDefined();
    if (mention) expect(variantOf(mention.name, mention, words, 0, words.length).exercise?.id).toBe(id);
  });
});
