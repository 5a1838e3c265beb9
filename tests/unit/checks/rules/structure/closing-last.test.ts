import { closingLast } from "../../../../../shared/checks/rules/structure/closing-last";
import { ruleTest } from "../../rule-test";

ruleTest(closingLast, {
  valid: ["[cool-down] Cool-down\n[closing] Bye", "[talk] Why"],
  invalid: [{ script: "[closing] Bye\n[cool-down] Cool-down", errors: [{ message: "early", says: "Bye comes as block 1 of 2, expected last. Move it down.", remedies: 1 }] }],
});
