import { breathingPhase } from "../../../../../shared/checks/rules/words/breathing-phase";
import { ruleTest } from "../../rule-test";

ruleTest(breathingPhase, {
  valid: ["[exercise goblet-squat] Squat\nsay: Breathe out as you stand.", "[exercise goblet-squat] Squat\ncue: Never breathe in as you stand", "[talk] Talk\nsay: Breathe in as you stand at the window."],
  invalid: [
    { script: "[exercise goblet-squat] Squat\nsay: Slowly now. Breathe in as you stand.", errors: [{ message: "inhale", at: "Breathe in as you stand" }] },
    { script: "[exercise bench-press] Bench press\ncue: Inhale while you press", errors: [{ message: "inhale" }] },
  ],
});
