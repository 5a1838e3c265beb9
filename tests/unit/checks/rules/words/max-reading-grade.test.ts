import { maxReadingGrade } from "../../../../../shared/checks/rules/words/max-reading-grade";
import { ruleTest } from "../../rule-test";

ruleTest(maxReadingGrade, {
  valid: [{ name: "plain words", script: `[exercise goblet-squat] Squat\n${"cue: Sit down between your heels and stand up tall\n".repeat(8)}` }, "[exercise goblet-squat] Squat\ncue: Simultaneously accommodate contralateral musculature"],
  invalid: [{ script: `[exercise goblet-squat] Squat\n${"caution: Individuals experiencing cardiovascular irregularities should immediately discontinue participation and subsequently consult appropriately qualified professionals\n".repeat(6)}`, errors: [{ message: "hard" }] }],
});
