import { unreadableSetLine } from "../../../../../shared/checks/rules/dose/unreadable-set-line";
import { ruleTest } from "../../rule-test";

ruleTest(unreadableSetLine, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     sets: 3 x 8-10 @ 20 kg, tempo 3-1-1-0, rest 90 s, RIR 2`,
    { name: "an empty line", script: `[exercise goblet-squat] Goblet squat
      sets: ` },
  ],
  invalid: [
    { name: "two efforts that cannot both hold: a remedy for each", script: `[exercise goblet-squat] Goblet squat
        sets: 4 x 5 @ 20 kg, RPE 9, RIR 4`, errors: [{ message: "unreadable", says: "Goblet squat: \"4 x 5 @ 20 kg, RPE 9, RIR 4\" cannot be read: RPE 9 and 4 reps in reserve disagree. Write it like \"3 x 8-10 @ 40 kg, rest 90 s\".", remedies: 2 }] },
    { name: "a word too many", script: `[exercise goblet-squat] Goblet squat
        sets: 4 x 5 @ 20 kg, as ever, RIR 2`, errors: [{ message: "unreadable", at: "as", remedies: 1 }] },
    { script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10-8`, errors: [{ message: "unreadable" }] },
    { name: "prose", script: `[exercise goblet-squat] Goblet squat
        sets: as it comes`, errors: [{ message: "unreadable" }] },
  ],
});
