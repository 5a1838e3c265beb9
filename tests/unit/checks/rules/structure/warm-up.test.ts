import { warmUpRule } from "../../../../../shared/checks/rules/structure/warm-up";
import { ruleTest } from "../../rule-test";

ruleTest(warmUpRule, {
  valid: [
    "[talk] Questions",
    `[warm-up, minutes 8] Warm-up
     [exercise goblet-squat] Goblet squat`,
    { name: "drills that are exercises of their own", script: `[exercise hip-circles] Hip circles
      [exercise goblet-squat] Goblet squat` },
    { name: "a mobility session is a warm-up itself", script: `[exercise cat-camel] Cat-camel
      [exercise calf-stretch] Calf stretch` },
  ],
  invalid: [
    {
      name: "no warm-up at all: the remedy adds one with the joints of the first lifts",
      script: `[opening] Opening
        [exercise goblet-squat] Goblet squat`,
      errors: [{ message: "none", says: "No warm-up before Goblet squat. Plan 5 to 10 minutes before the first exercise.", remedies: 1 }],
    },
    {
      name: "an exercise the catalogue does not know",
      script: "[exercise] Log carry of my uncle",
      errors: [{ message: "none", remedies: 1 }],
    },
  ],
});
