import { minChapters } from "../../../../../shared/checks/rules/publishing/min-chapters";
import { ruleTest } from "../../rule-test";

ruleTest(minChapters, {
  valid: ["[opening, clip 20] Hello\n[talk, clip 30] Why\n[closing, clip 12] Bye", "[talk, clip 20] Short"],
  invalid: [{ script: "[opening, clip 20] Hello\n[talk, clip 300] All of it", errors: [{ message: "few", says: "2 blocks are long enough for a chapter, at least 3 expected. Split a long block." }] }],
});
