import { exerciseOrder } from "../../../../../shared/checks/rules/structure/exercise-order";
import { ruleTest } from "../../rule-test";

ruleTest(exerciseOrder, {
  valid: [
    `[exercise bent-over-row] Row
     [exercise biceps-curl] Curl`,
    { name: "other muscles", script: `[exercise leg-extension] Leg extension
      [exercise bench-press] Bench press` },
    { name: "on purpose, and it says so", script: `[exercise glute-bridge] Bridge
      note: activation before the hinge
      [exercise deadlift] Deadlift` },
  ],
  invalid: [
    {
      name: "a curl before a heavy row",
      script: `[exercise biceps-curl] Curl
        [exercise bent-over-row] Row`,
      errors: [{ message: "before", says: "Curl comes before Row, and both need the biceps. Put Row first.", remedies: 1 }],
    },
    {
      name: "a leg extension before the squat",
      script: `[exercise leg-extension] Leg extension
        [exercise plank] Plank
        [exercise back-squat] Back squat`,
      errors: [{ message: "before", remedies: 1 }],
    },
  ],
});
