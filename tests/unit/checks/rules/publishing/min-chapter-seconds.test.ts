import { minChapterSeconds } from "../../../../../shared/checks/rules/publishing/min-chapter-seconds";
import { ruleTest } from "../../rule-test";

ruleTest(minChapterSeconds, {
  valid: [
    "[talk, clip 10] Questions",
    { name: "nothing on screen yet", script: "[talk] Questions" },
  ],
  invalid: [
    { script: "[talk, clip 8] Questions", errors: [{ message: "short", says: "Questions is 8 s on screen, at least 10 s expected for a chapter. Lengthen it, or join it to its neighbour." }] },
  ],
});
