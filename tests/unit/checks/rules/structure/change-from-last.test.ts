import { changeFromLast } from "../../../../../shared/checks/rules/structure/change-from-last";
import { ruleTest } from "../../rule-test";

ruleTest(changeFromLast, {
  valid: [
    { script: "[exercise goblet-squat] Squat\nsets: 3 x 10 @ 22 kg", fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] } },
    { script: "[exercise goblet-squat] Squat\nsets: 3 x 10 @ 20 kg\nsay: Same weight as last week, and slower.", fields: { carryOver: [{ exercise: "goblet-squat", sets: "3x10 @ 20kg", actuals: [], note: "" }] } },
    "[exercise goblet-squat] Squat\nsets: 3 x 10 @ 20 kg",
  ],
  invalid: [{ script: "[exercise goblet-squat] Squat\nsets: 3 x 10 @ 20 kg\nsay: Bell close.", fields: { carryOver: [{ exercise: "goblet-squat", sets: "3x10 @ 20kg", actuals: [], note: "" }] }, errors: [{ message: "unsaid", says: "Squat is as last time (3 x 10 @ 20 kg), and no words say so. Say what changed, or that nothing did." }] }],
});
