import { audiencePosition } from "../../../../../shared/checks/rules/structure/audience-position";
import { ruleTest } from "../../rule-test";

ruleTest(audiencePosition, {
  valid: [
    { name: "nobody pregnant is addressed", script: "[exercise bench-press] Bench press" },
    { name: "a jump is the matter of another rule", script: "[exercise box-jump] Box jump", fields: { audience: { level: "mixed", groups: ["pregnant"] } } },
    { name: "standing work", script: "[exercise band-row] Band row", fields: { audience: { level: "mixed", groups: ["pregnant"] } } },
  ],
  invalid: [
    {
      script: "[exercise dead-bug] Dead bug",
      fields: { audience: { level: "mixed", groups: ["pregnant"] } },
      errors: [{ message: "position", says: "Dead bug is done lying face up, and the episode addresses pregnant viewers. Show another exercise or a raised version." }],
    },
  ],
});
