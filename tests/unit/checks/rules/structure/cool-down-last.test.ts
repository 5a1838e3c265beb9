import { coolDownLast } from "../../../../../shared/checks/rules/structure/cool-down-last";
import { ruleTest } from "../../rule-test";

ruleTest(coolDownLast, {
  valid: ["[exercise goblet-squat] Squat\n[cool-down] Cool-down", "[cool-down] Cool-down"],
  invalid: [{ script: "[cool-down] Cool-down\n[exercise goblet-squat] Squat", errors: [{ message: "early", says: "Cool-down comes before Squat, expected after it. Move it down.", remedies: 1 }] }],
});
