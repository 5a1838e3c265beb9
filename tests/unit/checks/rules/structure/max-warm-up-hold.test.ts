import { maxWarmUpHold } from "../../../../../shared/checks/rules/structure/max-warm-up-hold";
import { ruleTest } from "../../rule-test";

ruleTest(maxWarmUpHold, {
  valid: [
    "[warm-up] Warm-up\ncue: Hold each stretch for twenty seconds\n[exercise back-squat] Squat",
    { name: "no number", script: "[warm-up] Warm-up\ncue: Stretch what feels stiff\n[exercise back-squat] Squat" },
    { name: "minutes of walking", script: "[warm-up] Warm-up\ncue: Three minutes of walking\n[exercise back-squat] Squat" },
    { name: "nothing heavy or fast follows", script: "[warm-up] Warm-up\ncue: Hold the stretch for 90 seconds\n[exercise band-row] Row" },
    { name: "at the end", script: "[exercise back-squat] Squat\n[cool-down] End\ncue: Hold the stretch for two minutes" },
  ],
  invalid: [
    { script: "[warm-up] Warm-up\ncue: Hold a calf stretch for ninety seconds\n[exercise box-jump] Box jump", errors: [{ message: "long", at: "ninety", says: "Warm-up: a stretch held for 90 s before Box jump, less than 60 s expected. Move through it instead, or stretch at the end." }] },
    { script: "[warm-up] Warm-up\ncue: Stretch the hips, 2 min each\n[exercise back-squat] Squat", errors: [{ message: "long", at: "2" }] },
  ],
});
