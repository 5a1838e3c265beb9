import { bothSides } from "../../../../../shared/checks/rules/structure/both-sides";
import { ruleTest } from "../../rule-test";

ruleTest(bothSides, {
  valid: [
    `[exercise step-up] Step-up
     sets: 3 x 8 each side @ 10 kg, rest 60 s`,
    { name: "both sides at once", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 8` },
    { name: "an unreadable line is another rule's matter", script: `[exercise step-up] Step-up
      sets: some` },
  ],
  invalid: [
    {
      script: `[exercise step-up] Step-up
        sets: 3 x 8 @ 10 kg, rest 60 s`,
      errors: [{ message: "oneSide", at: "3 x 8 @ 10 kg, rest 60 s", says: "Step-up: \"3 x 8 @ 10 kg, rest 60 s\" counts one side only. Write each side.", remedies: 1 }],
    },
    {
      name: "ramp-up and working lines alike",
      script: `[exercise half-kneeling-landmine-press] Landmine press
        ramp-up: 1 x 8
        sets: 3 x 8, rest 60 s`,
      errors: [{ message: "oneSide", at: "1 x 8", remedies: 1 }, { message: "oneSide", at: "3 x 8, rest 60 s", remedies: 1 }],
    },
  ],
});
