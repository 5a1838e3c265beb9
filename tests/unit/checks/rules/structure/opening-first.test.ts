import { openingFirst } from "../../../../../shared/checks/rules/structure/opening-first";
import { ruleTest } from "../../rule-test";

ruleTest(openingFirst, {
  valid: ["[opening] Hello\n[warm-up] Warm-up", "[exercise goblet-squat] Squat"],
  invalid: [{ script: "[warm-up] Warm-up\n[opening] Hello", errors: [{ message: "late", says: "Hello comes as block 2, expected first. Move it up.", remedies: 1 }] }],
});
