import { minRest } from "../../../../../shared/checks/rules/dose/min-rest";
import { ruleTest } from "../../rule-test";

ruleTest(minRest, {
  valid: [
    `[exercise back-squat] Back squat
     sets: 4 x 5 @ 80 kg, rest 180 s`,
    { name: "exactly two minutes", script: `[exercise back-squat] Back squat
      sets: 4 x 5 @ 80 kg, rest 2 min` },
    { name: "many light repetitions", script: `[exercise back-squat] Back squat
      sets: 3 x 12, rest 60 s` },
    { name: "no rest written", script: `[exercise back-squat] Back squat
      sets: 4 x 5 @ 80 kg` },
    { name: "a light exercise", script: `[exercise goblet-squat] Goblet squat
      sets: 4 x 5, rest 45 s` },
  ],
  invalid: [
    {
      script: `[exercise back-squat] Back squat
        sets: 4 x 5 @ 80 kg, rest 45 s`,
      errors: [{ message: "short", says: "Back squat: 5 heavy repetitions with 45 s of rest, at least 2 min expected. Rest longer or go lighter." }],
    },
  ],
});
