import { askAProfessional } from "../../../../../shared/checks/rules/words/ask-a-professional";
import { ruleTest } from "../../rule-test";

ruleTest(askAProfessional, {
  valid: ["[exercise goblet-squat] Squat\nsay: If it hurts, ask a doctor.", "[exercise goblet-squat] Squat\ncaution: Ask a coach to look at you", "[talk] Talk"],
  invalid: [{ script: "[exercise goblet-squat] Squat\nsay: Off we go.", errors: [{ message: "unsaid", remedies: 1 }] }],
});
