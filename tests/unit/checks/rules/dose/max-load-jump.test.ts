import { maxLoadJump } from "../../../../../shared/checks/rules/dose/max-load-jump";
import { ruleTest } from "../../rule-test";

ruleTest(maxLoadJump, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     sets: 3 x 10 @ 22 kg`,
    { name: "exactly a tenth", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10 @ 22 kg`, fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] } },
    { name: "lighter than last time", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10 @ 16 kg`, fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] } },
    { name: "another unit is not compared", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10 @ 45 lb`, fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] } },
    { name: "what was really lifted counts, not what was planned", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10 @ 24 kg`, fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [{ set: 1, load: 24, reps: 10, rir: 2 }], note: "" }] } },
  ],
  invalid: [
    {
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10 @ 26 kg`,
      fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] },
      errors: [{ message: "jump", level: "fix", says: "Goblet squat: 26 kg today, 20 kg last time: 30 % more, at most 10 % expected. Take a smaller step.", remedies: 1 }],
    },
    {
      name: "one dumbbell size up from a light one is worth a thought only",
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10 @ 12 kg`,
      fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 10 kg", actuals: [], note: "" }] },
      errors: [{ message: "jump", level: "consider" }],
    },
    {
      name: "much heavier for fewer repetitions may be the plan",
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 5 @ 26 kg`,
      fields: { carryOver: [{ exercise: "goblet-squat", sets: "3 x 10 @ 20 kg", actuals: [], note: "" }] },
      errors: [{ message: "jump", level: "consider", remedies: 1 }],
    },
  ],
});
