import { breathingPhase } from "../../../../../shared/checks/rules/words/breathing-phase";
import { ruleTest } from "../../rule-test";

ruleTest(breathingPhase, {
  valid: ["[exercise lat-pulldown] Pulldown\nsay: Breathe in on the way up, and out as you pull.", "[exercise goblet-squat] Squat\nsay: Breathe out as you stand.", "[exercise goblet-squat] Squat\ncue: Never breathe in as you stand", "[talk] Talk\nsay: Breathe in as you stand at the window."],
  invalid: [
    { name: "on the way up of a lift", script: "[exercise back-squat] Squat\nsay: Inhale on the way up and exhale on the way down.", errors: [{ message: "inhale", at: "Inhale on the way up" }] },
    { name: "as the bar comes up", script: "[exercise overhead-press] Press\ncue: Breathe in as the bar goes up", errors: [{ message: "inhale" }] },
    { script: "[exercise goblet-squat] Squat\nsay: Slowly now. Breathe in as you stand.", errors: [{ message: "inhale", at: "Breathe in as you stand" }] },
    { script: "[exercise bench-press] Bench press\ncue: Inhale while you press", errors: [{ message: "inhale" }] },
  ],
});
