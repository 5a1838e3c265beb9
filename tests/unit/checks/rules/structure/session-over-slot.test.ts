import { sessionOverSlot } from "../../../../../shared/checks/rules/structure/session-over-slot";
import { ruleTest } from "../../rule-test";

ruleTest(sessionOverSlot, {
  valid: [
    "[warm-up, minutes 8] Warm-up",
    { name: "exactly the slot", script: "[talk, minutes 60] Questions" },
  ],
  invalid: [
    {
      script: "[talk, minutes 70] Questions",
      errors: [{ message: "over", says: "The session takes 70 min, the slot is 60 min: 10 min too long. Cut a set or an exercise, or book more time." }],
    },
  ],
});
