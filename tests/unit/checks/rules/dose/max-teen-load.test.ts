import { maxTeenLoad } from "../../../../../shared/checks/rules/dose/max-teen-load";
import { ruleTest } from "../../rule-test";

ruleTest(maxTeenLoad, {
  valid: ["[exercise back-squat] Squat\nsets: 1 x 1 @ 95%", { script: "[exercise back-squat] Squat\nsets: 3 x 10 @ 60%", fields: { audience: { level: "beginner", groups: ["teen"] } } }],
  invalid: [
    { script: "[exercise back-squat] Squat\nsets: 3 x 5 @ 90%", fields: { audience: { level: "beginner", groups: ["teen"] } }, errors: [{ message: "heavy", says: "Squat: 90 % of the best single for teenagers, less than 85 % expected. Go lighter." }] },
    { script: "[exercise back-squat] Squat\nsets: 5 x 2 @ 60 kg", fields: { audience: { level: "beginner", groups: ["teen"] } }, errors: [{ message: "few" }] },
  ],
});
