import { warmUpFirst } from "../../../../../shared/checks/rules/structure/warm-up-first";
import { ruleTest } from "../../rule-test";

ruleTest(warmUpFirst, {
  valid: ["[warm-up] Warm-up\n[exercise goblet-squat] Squat", "[exercise goblet-squat] Squat", "[warm-up] Warm-up"],
  invalid: [{ script: "[exercise goblet-squat] Squat\n[warm-up] Warm-up", errors: [{ message: "late", says: "Warm-up comes after Squat, expected before it. Move it up.", remedies: 1 }] }],
});
