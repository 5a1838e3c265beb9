import { closing } from "../../../../../shared/checks/rules/structure/closing";
import { ruleTest } from "../../rule-test";

ruleTest(closing, {
  valid: [
    "[talk] Questions",
    `[exercise goblet-squat] Goblet squat
     [closing] Closing`,
  ],
  invalid: [
    { script: "[exercise goblet-squat] Goblet squat", errors: [{ message: "none", remedies: 1 }] },
  ],
});
