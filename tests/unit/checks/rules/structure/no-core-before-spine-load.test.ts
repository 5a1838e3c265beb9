import { noCoreBeforeSpineLoad } from "../../../../../shared/checks/rules/structure/no-core-before-spine-load";
import { ruleTest } from "../../rule-test";

ruleTest(noCoreBeforeSpineLoad, {
  valid: ["[exercise deadlift] Deadlift\n[exercise plank] Plank", "[exercise plank] Plank\n[exercise goblet-squat] Squat"],
  invalid: [{ script: "[exercise plank] Plank\n[exercise deadlift] Deadlift", errors: [{ message: "before", says: "Plank comes before Deadlift, which loads the spine. Put Deadlift first.", remedies: 1 }] }],
});
