import { minWarmUpMinutes } from "../../../../../shared/checks/rules/structure/min-warm-up-minutes";
import { ruleTest } from "../../rule-test";

ruleTest(minWarmUpMinutes, {
  valid: [
    "[warm-up] Warm-up",
    { name: "exactly at the limit", script: "[warm-up, minutes 5] Warm-up" },
    { name: "limit lowered by option", script: "[warm-up, minutes 4] Warm-up", options: { min: 4 } },
    { name: "a short cool-down is another matter", script: "[cool-down, minutes 2] Cool-down" },
  ],
  invalid: [
    {
      script: "[warm-up, minutes 3] Warm-up",
      errors: [{ message: "short", says: "Warm-up: 3 min planned, at least 5 expected. Give it 2 min more.", remedies: 1 }],
    },
  ],
});
