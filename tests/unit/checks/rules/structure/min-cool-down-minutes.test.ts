import { minCoolDownMinutes } from "../../../../../shared/checks/rules/structure/min-cool-down-minutes";
import { ruleTest } from "../../rule-test";

ruleTest(minCoolDownMinutes, {
  valid: ["[cool-down, minutes 5] Cool-down", "[cool-down, minutes 3] Cool-down", "[cool-down] Cool-down", "[closing, minutes 1] Closing"],
  invalid: [{ script: "[cool-down, minutes 1] Cool-down", errors: [{ message: "short", says: "Cool-down: 1 min planned, about 5 expected. Give it more time.", remedies: 1 }] }],
});
