import { rampUpSets } from "../../../../../shared/checks/rules/structure/ramp-up-sets";
import { ruleTest } from "../../rule-test";

ruleTest(rampUpSets, {
  valid: [
    `[exercise back-squat] Back squat
     ramp-up: 1 x 8 @ 20 kg
     sets: 3 x 5 @ 60 kg, rest 180 s`,
    { name: "a light exercise", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10 @ 20 kg` },
    { name: "the muscles are already warm from a heavy lift before", script: `[exercise back-squat] Back squat
      ramp-up: 1 x 8 @ 20 kg
      sets: 3 x 5 @ 60 kg
      [exercise front-squat] Front squat
      sets: 3 x 5 @ 40 kg` },
    { name: "many light repetitions", script: `[exercise leg-press] Leg press
      sets: 2 x 15 @ 40 kg` },
    { name: "no working set to prepare", script: "[exercise back-squat] Back squat" },
  ],
  invalid: [
    {
      script: `[exercise back-squat] Back squat
        sets: 3 x 5 @ 60 kg, rest 180 s`,
      errors: [{ message: "none", says: "Back squat: 3 working sets and no ramp-up sets. Add a few lighter sets first.", remedies: 2 }],
    },
    {
      name: "dumbbells: the remedy keeps each hand",
      script: `[exercise dumbbell-bench-press] Dumbbell press
        sets: 3 x 8 @ 20 kg each hand`,
      errors: [{ message: "none", remedies: 2 }],
    },
    {
      name: "no load to take half of",
      script: `[exercise pull-up] Pull-up
        sets: 3 x 5`,
      errors: [{ message: "none", remedies: 0 }],
    },
  ],
});
