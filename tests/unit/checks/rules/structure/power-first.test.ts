import { powerFirst } from "../../../../../shared/checks/rules/structure/power-first";
import { ruleTest } from "../../rule-test";

ruleTest(powerFirst, {
  valid: ["[exercise box-jump] Jumps\n[exercise back-squat] Squat", "[exercise box-jump] Jumps", "[exercise biceps-curl] Curl\n[exercise box-jump] Jumps"],
  invalid: [{ script: "[exercise back-squat] Squat\n[exercise box-jump] Jumps", errors: [{ message: "late", says: "Jumps comes after Squat, expected before it, while the legs are fresh. Move it up.", remedies: 1 }] }],
});
