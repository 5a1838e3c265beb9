import { exerciseShot } from "../../../../../shared/checks/rules/film/exercise-shot";
import { ruleTest } from "../../rule-test";

ruleTest(exerciseShot, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     shot: Side, full, 15 s: the whole movement`,
    "[talk] Questions",
  ],
  invalid: [
    { script: "[exercise goblet-squat] Goblet squat", errors: [{ message: "none", remedies: 1 }] },
  ],
});
