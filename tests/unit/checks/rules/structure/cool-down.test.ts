import { coolDown } from "../../../../../shared/checks/rules/structure/cool-down";
import { ruleTest } from "../../rule-test";

ruleTest(coolDown, {
  valid: [
    "[talk] Questions",
    `[exercise goblet-squat] Goblet squat
     [cool-down, minutes 5] Cool-down`,
    { name: "a mobility session", script: "[exercise calf-stretch] Calf stretch" },
  ],
  invalid: [
    {
      script: `[exercise goblet-squat] Goblet squat
        [closing] Closing`,
      errors: [{ message: "none", says: "No cool-down after Goblet squat. Plan about 5 minutes of easy movement at the end.", remedies: 1 }],
    },
  ],
});
