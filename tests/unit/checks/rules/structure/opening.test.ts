import { opening } from "../../../../../shared/checks/rules/structure/opening";
import { ruleTest } from "../../rule-test";

ruleTest(opening, {
  valid: [
    "[talk] Questions",
    `[opening] Opening
     [exercise goblet-squat] Goblet squat`,
  ],
  invalid: [
    {
      script: "[exercise goblet-squat] Goblet squat",
      fields: { title: "Legs for hills" },
      errors: [{ message: "none", says: "No opening. Film a few seconds that say what Legs for hills is for.", remedies: 1 }],
    },
  ],
});
