import { heavyFirst } from "../../../../../shared/checks/rules/structure/heavy-first";
import { ruleTest } from "../../rule-test";

ruleTest(heavyFirst, {
  valid: [
    "[exercise back-squat] Squat\nsets: 5 x 5 @ 80 kg\n[exercise leg-press] Press\nsets: 3 x 15 @ 100 kg",
    "[exercise leg-press] Press\nsets: 3 x 10 @ 100 kg\n[exercise back-squat] Squat\nsets: 5 x 5 @ 80 kg",
    { name: "other muscles", script: "[exercise lat-pulldown] Pulldown\nsets: 3 x 15\n[exercise back-squat] Squat\nsets: 5 x 5 @ 80 kg" },
  ],
  invalid: [{ script: "[exercise leg-press] Press\nsets: 3 x 15 @ 100 kg\n[exercise back-squat] Squat\nsets: 5 x 5 @ 80 kg", errors: [{ message: "late", remedies: 1 }] }],
});
