import { maxBeginnerEffort } from "../../../../../shared/checks/rules/dose/max-beginner-effort";
import { ruleTest } from "../../rule-test";

ruleTest(maxBeginnerEffort, {
  valid: ["[exercise back-squat] Squat\nsets: 3 x 8 @ 40 kg, RIR 3", "[exercise biceps-curl] Curl\nsets: 3 x 12, RIR 0", { script: "[exercise back-squat] Squat\nsets: 3 x 8, RIR 0", fields: { audience: { level: "advanced", groups: [] } } }],
  invalid: [
    { script: "[exercise back-squat] Squat\nsets: 3 x 8 @ 40 kg, RIR 0", errors: [{ message: "last", says: "Squat: beginners are asked for 0 in reserve, at least 1 repetition in reserve expected. Leave more." }] },
    { script: "[exercise back-squat] Squat\nsets: 3 x 8 @ 40 kg, RPE 10", errors: [{ message: "last" }] },
    { script: "[exercise back-squat] Squat\nsets: 2 x AMRAP @ 40 kg", errors: [{ message: "last" }] },
  ],
});
