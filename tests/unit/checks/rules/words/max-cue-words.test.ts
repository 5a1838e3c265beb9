import { maxCueWords } from "../../../../../shared/checks/rules/words/max-cue-words";
import { ruleTest } from "../../rule-test";

ruleTest(maxCueWords, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     cue: One two three four five six seven eight nine ten eleven twelve`,
    { name: "a warm-up cue is a list", script: `[warm-up] Warm-up
      cue: Ten slow circles each for the ankles, the knees, the hips, the shoulders, the elbows and the wrists` },
    { name: "limit raised by option", script: `[exercise goblet-squat] Goblet squat
      cue: One two three four five six seven eight nine ten eleven twelve thirteen`, options: { max: 13 } },
  ],
  invalid: [
    {
      name: "one word over",
      script: `[exercise goblet-squat] Goblet squat
        cue: One two three four five six seven eight nine ten eleven twelve thirteen`,
      errors: [{ message: "long", says: "Goblet squat: a cue has 13 words, at most 12 expected. Split it, or move the reason into the voiceover." }],
    },
  ],
});
