import { warmUpRule } from "../../../../../shared/checks/rules/structure/warm-up";
import { ruleTest } from "../../rule-test";

ruleTest(warmUpRule, {
  valid: [
    "[talk] Questions",
    `[warm-up, minutes 8] Warm-up
     [exercise goblet-squat] Goblet squat`,
  ],
  invalid: [
    {
      name: "no warm-up at all: the remedy adds one with the joints of the first lifts",
      script: `[opening] Opening
        [exercise goblet-squat] Goblet squat`,
      errors: [{ message: "none", says: "No warm-up before Goblet squat. Plan 5 to 10 minutes before the first exercise.", remedies: 1 }],
    },
    {
      name: "an exercise the catalogue does not know",
      script: "[exercise] Log carry of my uncle",
      errors: [{ message: "none", remedies: 1 }],
    },
    {
      name: "a warm-up behind the first exercise",
      script: `[exercise goblet-squat] Goblet squat
        [warm-up, minutes 8] Warm-up`,
      errors: [{ message: "late", says: "The warm-up stands after Goblet squat. Move it in front of the first exercise.", remedies: 1 }],
    },
  ],
});
