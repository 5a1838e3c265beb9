import { maxWorkInMinute } from "../../../../../shared/checks/rules/dose/max-work-in-minute";
import { ruleTest } from "../../rule-test";

ruleTest(maxWorkInMinute, {
  valid: ["[exercise kettlebell-swing] Swings\nsets: EMOM 8 min: 10 reps @ 16 kg", "[exercise goblet-squat] Squat\nsets: 3 x 30 @ 16 kg"],
  invalid: [{ script: "[exercise goblet-squat] Squat\nsets: EMOM 8 min: 25 reps @ 16 kg", errors: [{ message: "long" }] }],
});
