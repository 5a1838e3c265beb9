import { bothSidesSaid } from "../../../../../shared/checks/rules/words/both-sides-said";
import { ruleTest } from "../../rule-test";

ruleTest(bothSidesSaid, {
  valid: [
    "[exercise half-kneeling-landmine-press] Press\ncue: Left knee down, then the other",
    "[exercise half-kneeling-landmine-press] Press\ncue: Front knee over the foot",
    "[exercise goblet-squat] Squat\ncue: Left foot flat",
    "[exercise half-kneeling-landmine-press] Press\ncue: Left knee down\nsay: Now the right knee.",
  ],
  invalid: [{ script: "[exercise half-kneeling-landmine-press] Press\ncue: Put the left knee on the pad", errors: [{ message: "one", at: "left knee", says: "Press: \"left knee\" fits one half of the set only. Say front or back, working or free, or name both sides." }] }],
});
