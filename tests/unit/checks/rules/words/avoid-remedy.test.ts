import { avoidRemedy } from "../../../../../shared/checks/rules/words/avoid-remedy";
import { ruleTest } from "../../rule-test";

ruleTest(avoidRemedy, {
  valid: ["[exercise goblet-squat] Squat\navoid: Letting the knees fall in: push the floor apart", "[exercise goblet-squat] Squat\navoid: Rushing. Count to three instead", "[exercise goblet-squat] Squat\ncue: Sit tall"],
  invalid: [
    { script: "[exercise goblet-squat] Squat\navoid: Rushing down", errors: [{ message: "bare", says: "Squat: \"Rushing down\" is named without a way out. Add what to do instead." }] },
    { script: "[exercise goblet-squat] Squat\navoid: Knees falling in as you stand.", errors: [{ message: "bare", remedies: 1 }] },
  ],
});
