import { caution } from "../../../../../shared/checks/rules/words/caution";
import { ruleTest } from "../../rule-test";

ruleTest(caution, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     caution: Knee pain: stop`,
    "[talk] Questions",
  ],
  invalid: [
    { script: "[exercise goblet-squat] Goblet squat", errors: [{ message: "none", says: "Goblet squat: no caution. Say when to stop, go lighter or leave it out.", remedies: 1 }] },
    { name: "an exercise the catalogue does not know", script: "[exercise] Log lift", errors: [{ message: "none", remedies: 0 }] },
  ],
});
