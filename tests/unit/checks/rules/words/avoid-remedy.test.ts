import { avoidRemedy } from "../../../../../shared/checks/rules/words/avoid-remedy";
import { ruleTest } from "../../rule-test";

ruleTest(avoidRemedy, {
  valid: ["[exercise goblet-squat] Squat\ncue: Never rush: count three down", "[cool-down] End\ncue: Never into pain", "[exercise goblet-squat] Squat\navoid: Dropping fast, take two seconds", "[exercise goblet-squat] Squat\navoid: Letting the knees fall in: push the floor apart", "[exercise goblet-squat] Squat\navoid: Rushing. Count to three instead", "[exercise goblet-squat] Squat\ncue: Sit tall"],
  invalid: [
    { name: "a cue that only forbids", script: "[exercise goblet-squat] Squat\ncue: Don't let the heels come up", errors: [{ message: "forbids", says: "Squat: the cue \"Don't let the heels come up\" says only what not to do. Say what to do instead." }] },
    { name: "an order inside the fault is no way out", script: "[exercise goblet-squat] Squat\navoid: Forgetting to keep the chest up and push", errors: [{ message: "bare" }] },
    { name: "nothing behind the colon", script: "[exercise goblet-squat] Squat\navoid: Rushing:", errors: [{ message: "bare" }] },
    { script: "[exercise goblet-squat] Squat\navoid: Rushing down", errors: [{ message: "bare", says: "Squat: \"Rushing down\" is named without a way out. Add what to do instead." }] },
    { script: "[exercise goblet-squat] Squat\navoid: Knees falling in as you stand.", errors: [{ message: "bare", remedies: 1 }] },
  ],
});
