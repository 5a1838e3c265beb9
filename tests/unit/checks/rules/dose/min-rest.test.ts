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
    { name: "few repetitions at a light percentage", script: `[exercise back-squat] Back squat
      sets: 6 x 3 @ 60 %1RM, rest 60 s` },
    { name: "a light exercise", script: `[exercise goblet-squat] Goblet squat
      sets: 4 x 5, rest 45 s` },
  ],
  invalid: [
    {
      script: `[exercise back-squat] Back squat
        sets: 4 x 5 @ 80 kg, rest 45 s`,
      errors: [{ message: "short", says: "Back squat: 5 heavy repetitions with 45 s of rest, at least 2 min expected. Rest longer or go lighter.", remedies: 1 }],
    },
    { name: "a high percentage, however many repetitions", script: `[exercise back-squat] Back squat
      sets: 4 x 8 @ 85 %1RM, rest 75 s`, errors: [{ message: "short", says: "Back squat: 85 % of the best single with 1 min 15 s of rest, at least 2 min expected. Rest longer or go lighter.", remedies: 1 }] },
    { name: "a ladder down to few", script: `[exercise back-squat] Back squat
      sets: 10/8/6/4 @ 60 kg, rest 60 s`, errors: [{ message: "short", remedies: 1 }] },
  ],
});
