import { repsAtPercent } from "../../../../../shared/checks/rules/dose/reps-at-percent";
import { ruleTest } from "../../rule-test";

ruleTest(repsAtPercent, {
  valid: ["[exercise back-squat] Squat\nsets: 3 x 5 @ 85%", "[exercise back-squat] Squat\nsets: 3 x 5 @ 100 kg", { name: "beyond the chart it is silent", script: "[exercise back-squat] Squat\nsets: 1 x 20 @ 80%" }],
  invalid: [{ script: "[exercise back-squat] Squat\nsets: 3 x 8 @ 92%", errors: [{ message: "impossible", says: "Squat: 8 repetitions at 92 % of the best single, about 78.6 % can be lifted that often. Lower one of them." }] }],
});
