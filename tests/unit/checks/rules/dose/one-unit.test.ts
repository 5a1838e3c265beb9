import { oneUnit } from "../../../../../shared/checks/rules/dose/one-unit";
import { ruleTest } from "../../rule-test";

ruleTest(oneUnit, {
  valid: ["[exercise back-squat] Squat\nsets: 3 x 5 @ 80 kg", "[exercise pull-up] Pull-up\nsets: 3 x 5 BW", "[exercise back-squat] Squat\nsets: 3 x 5 @ 80%"],
  invalid: [
    { script: "[exercise back-squat] Squat\nsets: 3 x 5 @ 185 lb", errors: [{ message: "other", says: "Squat: a load in lb, and the session counts in kg. Write it in kg.", remedies: 1 }] },
    { script: "[exercise back-squat] Squat\nramp-up: 1 x 5 @ 95 lb", errors: [{ message: "other" }] },
  ],
});
