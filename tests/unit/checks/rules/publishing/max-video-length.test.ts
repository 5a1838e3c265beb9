import { maxVideoLength } from "../../../../../shared/checks/rules/publishing/max-video-length";
import { ruleTest } from "../../rule-test";

ruleTest(maxVideoLength, {
  valid: [
    "[talk, clip 600] Questions",
  ],
  invalid: [
    { script: "[talk, clip 660] Questions", errors: [{ message: "over", says: "The video comes to 11 min, the target is 10 min: 1 min too long. Shorten a block, or change the target." }] },
  ],
});
