import { shotSet } from "../../../../../shared/checks/rules/film/shot-set";
import { ruleTest } from "../../rule-test";

ruleTest(shotSet, {
  valid: ["[exercise goblet-squat] Squat\nsets: 3 x 10\nshot: Side, full, set 3: back", "[exercise goblet-squat] Squat\nshot: Side, full, set 4: back"],
  invalid: [{ script: "[exercise goblet-squat] Squat\nsets: 3 x 10\nshot: Side, full, set 4: back", errors: [{ message: "beyond", says: "Squat: a shot is planned for set 4, and there are 3. Film it on another set." }] }],
});
