import { warmUpJoints } from "../../../../../shared/checks/rules/structure/warm-up-joints";
import { ruleTest } from "../../rule-test";

ruleTest(warmUpJoints, {
  valid: [
    `[warm-up] Warm-up
     cue: Circles for ankles, knees, hips, low back and elbows
     [exercise goblet-squat] Goblet squat`,
    { name: "an exercise in the warm-up moves its own joints", script: `[warm-up] Warm-up
      cue: Ten easy bodyweight squats
      cue: Circles for low back and elbows
      [exercise goblet-squat] Goblet squat` },
    { name: "no warm-up is another rule's matter", script: "[exercise bench-press] Bench press" },
    { name: "an exercise the catalogue does not know", script: `[warm-up] Warm-up
      [exercise] Rope game` },
    { name: "a light second exercise is warm by then", script: `[warm-up] Warm-up
      cue: Circles for ankles, knees, hips
      [exercise bodyweight-squat] Squat
      [exercise push-up] Push-up` },
  ],
  invalid: [
    {
      script: `[warm-up] Warm-up
        cue: Circles for ankles and hips
        [exercise goblet-squat] Goblet squat`,
      errors: [{ message: "missing", at: "knees, low back, elbows", says: "Warm-up leaves out the knees, low back and elbows, and Goblet squat will load them. Add a few circles or bends.", remedies: 1 }],
    },
    {
      name: "one joint missing",
      script: `[warm-up] Warm-up
        say: Ankles, knees, hips and low back first.
        [exercise goblet-squat] Goblet squat`,
      errors: [{ message: "missing", at: "elbows", says: "Warm-up leaves out the elbows, and Goblet squat will load them. Add a few circles or bends." }],
    },
    {
      name: "a heavy second lift needs joints that the first leaves cold",
      script: `[warm-up] Warm-up
        cue: Circles for ankles, knees and hips
        [exercise bodyweight-squat] Squat
        [exercise bench-press] Bench press`,
      errors: [{ message: "missing", at: "upper back, shoulders, elbows, wrists", remedies: 1 }],
    },
  ],
});
