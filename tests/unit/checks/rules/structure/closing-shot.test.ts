import { closingShot } from "../../../../../shared/checks/rules/structure/closing-shot";
import { ruleTest } from "../../rule-test";

ruleTest(closingShot, {
  valid: [
    `[closing] Goodbye
     shot: Front, medium, 12 s: to camera`,
    "[opening] Opening",
  ],
  invalid: [
    {
      script: `[closing] Goodbye
        say: See you next week.`,
      errors: [{ message: "none", says: "Goodbye: no shot planned. Add one of about 12 s, so that there is a picture for the last words.", remedies: 1 }],
    },
    {
      name: "an empty shot line is no shot",
      script: `[closing] Closing
        shot: `,
      errors: [{ message: "none" }],
    },
  ],
});
