import { minChapterSeconds } from "../../../../../shared/checks/rules/publishing/min-chapter-seconds";
import { ruleTest } from "../../rule-test";

ruleTest(minChapterSeconds, {
  valid: [
    "[talk, clip 10] Questions",
    { name: "nothing on screen yet", script: "[talk] Questions" },
  ],
  invalid: [
    { name: "several are one finding", script: "[talk, clip 8] One\n[talk, clip 90] Two\n[talk, clip 4] Three", errors: [{ message: "several", at: "8 s, 4 s", says: "One and Three are shorter than 10 s on screen, too short for chapters of their own. Lengthen them, or join them to their neighbours." }] },
    { script: "[talk, clip 8] Questions", errors: [{ message: "short", says: "Questions is 8 s on screen, at least 10 s expected for a chapter. Lengthen it, or join it to its neighbour." }] },
  ],
});
