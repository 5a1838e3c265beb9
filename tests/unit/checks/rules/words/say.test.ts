import { say } from "../../../../../shared/checks/rules/words/say";
import { ruleTest } from "../../rule-test";

ruleTest(say, {
  valid: ["[exercise goblet-squat] Squat\nsay: Bell close.", "[talk] Talk"],
  invalid: [{ script: "[exercise goblet-squat] Squat\ncue: Bell close", errors: [{ message: "none", says: "Squat: nothing to say yet. Write what you would tell somebody beside you." }] }],
});
