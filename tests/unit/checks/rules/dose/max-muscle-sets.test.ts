import { maxMuscleSets } from "../../../../../shared/checks/rules/dose/max-muscle-sets";
import { ruleTest } from "../../rule-test";

ruleTest(maxMuscleSets, {
  valid: ["[exercise biceps-curl] Curl\nsets: 4 x 10"],
  invalid: [{ script: "[exercise biceps-curl] Curl\nsets: 13 x 10", errors: [{ message: "many" }] }],
});
