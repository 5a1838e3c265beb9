import { maxJumpContacts } from "../../../../../shared/checks/rules/dose/max-jump-contacts";
import { ruleTest } from "../../rule-test";

ruleTest(maxJumpContacts, {
  valid: ["[exercise box-jump] Jumps\nsets: 4 x 6", { script: "[exercise box-jump] Jumps\nsets: 10 x 13", fields: { audience: { level: "advanced", groups: [] } } }],
  invalid: [{ script: "[exercise box-jump] Jumps\nsets: 8 x 10\n[exercise squat-jump] Squat jumps\nsets: 3 x 10", errors: [{ message: "many", says: "110 landings in the session, at most 100 expected for this audience. Fewer sets or repetitions." }] }],
});
