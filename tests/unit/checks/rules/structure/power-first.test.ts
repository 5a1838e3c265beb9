import { powerFirst } from "../../../../../shared/checks/rules/structure/power-first";
import { ruleTest } from "../../rule-test";

ruleTest(powerFirst, {
  valid: ["[exercise box-jump] Jumps\n[exercise back-squat] Squat", "[exercise box-jump] Jumps", "[exercise biceps-curl] Curl\n[exercise box-jump] Jumps"],
  invalid: [{ script: "[exercise back-squat] Squat\n[exercise box-jump] Jumps", errors: [{ message: "late", says: "Jumps comes after Squat, expected before it, while the legs are fresh. Move it up.", remedies: 1 }] }, {
    name: "several late ones are one finding, moved together in their order",
    script: "[exercise back-squat] Squat\n[exercise box-jump] Jumps\n[exercise biceps-curl] Curl\n[exercise pogo-hop] Hops",
    errors: [{ message: "late", says: "Jumps and Hops come after Squat, expected before it, while the legs are fresh. Move them up.", remedies: 1 }],
  }],
});
