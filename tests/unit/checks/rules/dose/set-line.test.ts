import { setLine } from "../../../../../shared/checks/rules/dose/set-line";
import { ruleTest } from "../../rule-test";

ruleTest(setLine, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     sets: 3 x 10`,
    "[warm-up, minutes 8] Warm-up",
  ],
  invalid: [
    { script: "[exercise goblet-squat] Goblet squat", errors: [{ message: "none", says: "Goblet squat: no working set line. Write one, such as \"3 x 10, rest 60 s\".", remedies: 1 }] },
    { name: "only a ramp-up line", script: `[exercise step-up] Step-up
        ramp-up: 1 x 8 each side`, errors: [{ message: "none", remedies: 1 }] },
    { name: "a carry has no usual repetitions to offer", script: "[exercise farmers-carry] Carry", errors: [{ message: "none", remedies: 0 }] },
  ],
});
