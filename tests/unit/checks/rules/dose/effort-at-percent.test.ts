import { effortAtPercent } from "../../../../../shared/checks/rules/dose/effort-at-percent";
import { ruleTest } from "../../rule-test";

ruleTest(effortAtPercent, {
  valid: ["[exercise back-squat] Squat\nsets: 3 x 5 @ 80%, RIR 2", "[exercise back-squat] Squat\nsets: 3 x 5 @ 80%", "[exercise back-squat] Squat\nsets: 3 x 5 @ 80 kg, RPE 8", { name: "a range widens what can hold", script: "[exercise back-squat] Squat\nsets: 3 x 4-7 @ 80%, RPE 8" }],
  invalid: [
    { script: "[exercise back-squat] Squat\nsets: 3 x 5 @ 92%, RIR 3", errors: [{ message: "apart" }] },
    { script: "[exercise back-squat] Squat\nsets: 3 x 3 @ 60%, RPE 9", errors: [{ message: "apart", says: "Squat: 3 repetitions with 1 in reserve are about 89 % of the best single, the line says 60 %. Change one of the three." }] },
  ],
});
