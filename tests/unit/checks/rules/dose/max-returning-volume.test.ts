import { maxReturningVolume } from "../../../../../shared/checks/rules/dose/max-returning-volume";
import { ruleTest } from "../../rule-test";

ruleTest(maxReturningVolume, {
  valid: [{ script: "[exercise back-squat] Squat\nsets: 3 x 10 @ 60%", fields: { audience: { level: "mixed", groups: ["returning"] } } }, "[exercise back-squat] Squat\nsets: 5 x 10 @ 70%"],
  invalid: [{ script: "[exercise back-squat] Squat\nsets: 5 x 10 @ 70%", fields: { audience: { level: "mixed", groups: ["returning"] } }, errors: [{ message: "much", says: "Squat: sets x repetitions x percentage come to 35, at most 30 expected for people coming back. Cut a set or the weight." }] }],
});
