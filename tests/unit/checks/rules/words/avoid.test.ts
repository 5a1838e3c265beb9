import { avoid } from "../../../../../shared/checks/rules/words/avoid";
import { ruleTest } from "../../rule-test";

ruleTest(avoid, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     avoid: Heels lifting: put a plate under them`,
    "[warm-up] Warm-up",
  ],
  invalid: [
    { script: "[exercise goblet-squat] Goblet squat", errors: [{ message: "none", says: "Goblet squat: no fault to avoid. Name the usual one and what to do instead.", remedies: 2 }] },
  ],
});
