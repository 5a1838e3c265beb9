import { openingShot } from "../../../../../shared/checks/rules/film/opening-shot";
import { ruleTest } from "../../rule-test";

ruleTest(openingShot, {
  valid: ["[opening] Hello\nshot: Front, medium, 10 s: to camera", "[closing] Bye"],
  invalid: [{ script: "[opening] Hello\nsay: Hello.", errors: [{ message: "none", says: "Hello: no shot planned. Add one to camera before you start.", remedies: 1 }] }],
});
