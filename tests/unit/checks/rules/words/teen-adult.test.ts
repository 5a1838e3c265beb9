import { teenAdult } from "../../../../../shared/checks/rules/words/teen-adult";
import type { Episode } from "../../../../../shared/episode";
import { ruleTest } from "../../rule-test";

const teens: Partial<Episode> = { audience: { level: "beginner", groups: ["teen"] } };

ruleTest(teenAdult, {
  valid: [
    "[exercise goblet-squat] Squat",
    { name: "said once, anywhere", script: "[exercise goblet-squat] Squat\n[closing] Closing\nsay: Show it to your coach first.", fields: teens },
    { name: "nothing to lift", script: "[talk] Talk", fields: teens },
  ],
  invalid: [{ script: "[opening] Opening\n[exercise goblet-squat] Squat\nsay: Slowly now.", fields: teens, errors: [{ message: "unsaid", says: "The episode addresses teenagers, and no spoken line or caution asks for an adult beside them. Say it once.", remedies: 1 }] }],
});
