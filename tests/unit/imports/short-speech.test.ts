import { describe, expect, it } from "vitest";
import { countingIds } from "../../../shared/episode";
import { importText } from "../../../shared/imports";

/** The exercises that are read from a few sentences, each with its set lines. */
function exercisesOf(text: string): string[] {
  const result = importText(text, "short.txt", countingIds("i-"));
  if (!result.ok) throw new Error(result.message);
  return result.episode.blocks.filter(({ kind }) => kind === "exercise").map(({ title, sets }) => `${title}: ${sets.map((set) => set.text).join("; ")}`);
}

describe("a few sentences", () => {
  // A name with its sets right behind it counts, whatever else is heard.
  it.each<readonly [text: string, exercises: readonly string[]]>([
    ["okay first one is the split squat we do four sets of eight with sixteen kilos next one is the barbell row three sets of ten with forty kilos", ["Split squat: 4 x 8 each side @ 16 kg each hand", "Bent-over row: 3 x 10 @ 40 kg"]],
    ["Hi and welcome. First exercise is the Bulgarian split squat. Four sets of eight with sixteen kilos. Now the walking lunge, three sets of ten with twelve kilos. Next the biceps curl, three sets of twelve with eight kilos. See you next week, bye.",
      ["Rear-foot-elevated split squat: 4 x 8 each side @ 16 kg each hand", "Walking lunge: 3 x 10 @ 12 kg each hand", "Dumbbell curl: 3 x 12 @ 8 kg each hand"]],
    ["Hi and welcome, today we train legs. We start with the split squat, four sets of eight with a sixteen kilo kettlebell. And we finish with calf raises, three sets of fifteen. Bye.", ["Split squat: 4 x 8 each side @ 16 kg", "Calf raise: 3 x 15"]],
    ["Welcome. Then lunges, three sets of ten with a twenty kilo barbell. Then the dumbbell curl, three sets of ten with twelve kilos. And step-ups, two sets of eight each leg.", ["Reverse lunge: 3 x 10 @ 20 kg", "Dumbbell curl: 3 x 10 @ 12 kg each hand", "Step-up: 2 x 8 each side"]],
    ["Push day today. Bench press four by six at seventy five kilos. Incline dumbbell press three by ten with thirties. Lateral raise three by fifteen with eights. Triceps pushdown three sets of twelve at twenty five kilos. Done.",
      ["Bench press: 4 x 6 @ 75 kg", "Incline dumbbell press: 3 x 10 @ 30 kg each hand", "Lateral raise: 3 x 15 @ 8 kg each hand", "Triceps pushdown: 3 x 12 @ 25 kg"]],
    ["so we are doing deadlift today I worked up to a hundred and forty kilos for one rep last week so today only five sets of three at a hundred and ten and then pull ups three sets to failure and then we finish with hanging knee raise three sets of twelve",
      ["Deadlift: 5 x 3 @ 110 kg", "Pull-up: 3 x AMRAP", "Hanging knee raise: 3 x 12"]],
  ])("%s", (text, exercises) => {
    expect(exercisesOf(text)).toEqual(exercises);
  });
});
