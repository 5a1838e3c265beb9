import { balanceSupport } from "../../../../../shared/checks/rules/structure/balance-support";
import type { Episode } from "../../../../../shared/episode";
import { ruleTest } from "../../rule-test";

const older: Partial<Episode> = { audience: { level: "mixed", groups: ["older"] } };

ruleTest(balanceSupport, {
  valid: [
    { name: "nobody in particular", script: "[exercise step-up] Step-up" },
    { name: "a rail in the title", script: "[exercise step-up] Step-up with a rail", fields: older },
    { name: "a hand on the wall", script: "[exercise split-squat] Split squat\ncue: One hand on the wall", fields: older },
    { name: "on two legs", script: "[exercise squat-to-box] Sit to stand", fields: older },
    { name: "lying down", script: "[exercise single-leg-glute-bridge] Bridge", fields: older },
  ],
  invalid: [
    { script: "[exercise single-leg-romanian-deadlift] Hinge\ncue: Slowly", fields: older, errors: [{ message: "none", says: "Hinge is done on one leg, the episode addresses older viewers, and nothing to hold is named. Name a wall, a rail or a chair.", remedies: 1 }] },
    { script: "[exercise walking-lunge] Lunges", fields: older, errors: [{ message: "none", remedies: 1 }] },
  ],
});
