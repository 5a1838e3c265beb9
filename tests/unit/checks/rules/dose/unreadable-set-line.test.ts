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
    { script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10-8`, errors: [{ message: "unreadable" }] },
    { name: "prose", script: `[exercise goblet-squat] Goblet squat
        sets: as it comes`, errors: [{ message: "unreadable" }] },
  ],
});
