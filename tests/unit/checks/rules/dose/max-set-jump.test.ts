import { maxSetJump } from "../../../../../shared/checks/rules/dose/max-set-jump";
import { ruleTest } from "../../rule-test";

ruleTest(maxSetJump, {
  valid: [
    { script: "[exercise goblet-squat] Squat\nsets: 4 x 10 @ 20 kg", fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] } },
    "[exercise goblet-squat] Squat\nsets: 9 x 10 @ 20 kg",
  ],
  invalid: [{ script: "[exercise goblet-squat] Squat\nsets: 6 x 10 @ 20 kg", fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] }, errors: [{ message: "jump", says: "Squat: 6 working sets today, 3 last time, at most 1 more expected. Add one at a time." }] }],
});
