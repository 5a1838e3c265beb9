import { title } from "../../../../../shared/checks/rules/publishing/title";
import { ruleTest } from "../../rule-test";

ruleTest(title, {
  valid: [{ script: "[exercise goblet-squat] Squat", fields: { title: "Squats for packs" } }, "[talk] Only talk"],
  invalid: [
    { script: "[exercise goblet-squat] Squat", errors: [{ message: "none" }] },
    { name: "too long", script: "[exercise goblet-squat] Squat", fields: { title: "A title ".repeat(10) }, errors: [{ message: "long", level: "consider", says: "The title has 79 characters, at most 70 expected. Shorten it." }] },
  ],
});
