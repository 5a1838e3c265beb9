import { noDisputedClaim } from "../../../../../shared/checks/rules/words/no-disputed-claim";
import { ruleTest } from "../../rule-test";

ruleTest(noDisputedClaim, {
  valid: [
    `[cool-down] Cool-down
     say: The cool-down lets your breath settle.`,
    { name: "a fault to avoid may be named", script: `[exercise goblet-squat] Goblet squat
      avoid: Never let your knees pass your toes is too strict for most` },
  ],
  invalid: [
    { script: `[cool-down] Cool-down
        say: The cool-down prevents soreness.`, errors: [{ message: "disputed", at: "cool-down prevents soreness" }] },
    { script: `[exercise goblet-squat] Goblet squat
        cue: Never let your knees pass your toes`, errors: [{ message: "disputed", level: "consider" }] },
    { script: `[exercise goblet-squat] Goblet squat
        say: You must fail every set to grow.`, errors: [{ message: "disputed", at: "must fail" }] },
    { script: `[exercise kettlebell-swing] Swing
        say: This burns 400 calories.`, errors: [{ message: "disputed", at: "burns 400 calories" }] },
    { script: `[talk] Talk
        say: Some say that lifting weights stunts growth.`, errors: [{ message: "disputed", at: "lifting weights stunts growth" }] },
  ],
});
