import { shotAngle } from "../../../../../shared/checks/rules/film/shot-angle";
import { ruleTest } from "../../rule-test";

ruleTest(shotAngle, {
  valid: ["[exercise plank] Plank\nshot: Side, full, 10 s: straight line", "[exercise plank] Plank\nshot: Insert, 4 s: elbows", "[opening] Hello\nshot: me at the rack", "[exercise plank] Plank\nshot: any angle, full: the whole thing"],
  invalid: [{ script: "[exercise plank] Plank\nshot: the whole movement once", errors: [{ message: "none", says: "Plank: the shot \"the whole movement once\" names no angle. Write front, side, three-quarter or rear first." }] }],
});
