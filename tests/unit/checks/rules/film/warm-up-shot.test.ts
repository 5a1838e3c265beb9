import { warmUpShot } from "../../../../../shared/checks/rules/film/warm-up-shot";
import { ruleTest } from "../../rule-test";

ruleTest(warmUpShot, {
  valid: ["[warm-up] Warm-up\nshot: Front, full, 15 s: circles", "[talk] Talk"],
  invalid: [
    { script: "[warm-up] Warm-up\ncue: Circles", errors: [{ message: "none", level: "fix", says: "Warm-up: no shot planned. Add one, so that viewers see it done.", remedies: 1 }] },
    { script: "[cool-down] Cool-down\nshot:", errors: [{ message: "none", level: "consider", remedies: 1 }] },
  ],
});
