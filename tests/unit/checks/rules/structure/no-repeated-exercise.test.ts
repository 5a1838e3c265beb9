import { noRepeatedExercise } from "../../../../../shared/checks/rules/structure/no-repeated-exercise";
import { ruleTest } from "../../rule-test";

ruleTest(noRepeatedExercise, {
  valid: ["[exercise goblet-squat] Squat\n[exercise deadlift] Deadlift", "[exercise goblet-squat] Squat\n[exercise goblet-squat] Squat again\nnote: the second round on purpose"],
  invalid: [{ script: "[exercise goblet-squat] Squat\n[talk] Why\n[exercise goblet-squat] Squat again", errors: [{ message: "twice", says: "Squat again stands at 1 and again at 3. Join them, or note why it comes twice." }] }],
});
