import { wordsOverClip } from "../../../../../shared/checks/rules/words/words-over-clip";
import { ruleTest } from "../../rule-test";

ruleTest(wordsOverClip, {
  valid: [
    `[exercise goblet-squat, clip 60] Goblet squat
     say: Sit down between the heels.`,
    { name: "no clip yet", script: `[exercise goblet-squat] Goblet squat
      say: This is how you get up from the ground with the pack on, and it is the one thing in the whole session that you will use every single day of the walk, whatever the weather does.` },
  ],
  invalid: [
    {
      script: `[exercise goblet-squat, clip 4] Goblet squat
        say: This is how you get up from the ground with the pack on, and it is the one thing in the whole session that you will use every single day of the walk, whatever the weather does.`,
      errors: [{ message: "over", remedies: 1 }],
    },
  ],
});
