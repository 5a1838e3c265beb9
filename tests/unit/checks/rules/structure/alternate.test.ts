import { alternate } from "../../../../../shared/checks/rules/structure/alternate";
import { ruleTest } from "../../rule-test";

ruleTest(alternate, {
  valid: ["[exercise leg-press] Press\nif taken: Goblet squat", "[exercise goblet-squat] Squat", "[exercise] Something else"],
  invalid: [
    { script: "[exercise leg-press] Press", errors: [{ message: "none", says: "Press: the leg press may be taken, and nothing is planned for then. Add an alternate.", remedies: 1 }] },
    { name: "an empty alternate is none", script: "[exercise leg-press] Legs\nif taken:", errors: [{ message: "none" }] },
  ],
});
