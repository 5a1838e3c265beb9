import { maxShotSeconds } from "../../../../../shared/checks/rules/film/max-shot-seconds";
import { ruleTest } from "../../rule-test";

ruleTest(maxShotSeconds, {
  valid: ["[exercise goblet-squat] Squat\nsets: 3 x 10, tempo 3-1-1-0\nshot: Side, full, set 1, 20 s: back", "[exercise goblet-squat] Squat\nsets: 3 x 10\nshot: Side, full, 90 s: back"],
  invalid: [{ script: "[exercise goblet-squat] Squat\nsets: 3 x 5, tempo 2-0-1-0\nshot: Side, full, set 1, 40 s: back", errors: [{ message: "long", says: "Squat: a shot of 40 s on a set that takes about 15 s. Shorten it, or film it on two sets." }] }],
});
