import { minJumpRest } from "../../../../../shared/checks/rules/dose/min-jump-rest";
import { ruleTest } from "../../rule-test";

ruleTest(minJumpRest, {
  valid: [
    "[exercise box-jump] Box jump\nsets: 4 x 5, rest 90 s",
    { name: "part of a round, where the others are the rest", script: "[exercise squat-jump] Jump\nsets: A1 3 x 8, rest 20 s" },
    { name: "one set rests for nothing", script: "[exercise squat-jump] Jump\nsets: 1 x 8, rest 20 s" },
    { name: "no jump", script: "[exercise plank] Plank\nsets: 3 x 30 s, rest 30 s" },
  ],
  invalid: [{ script: "[exercise box-jump] Box jump\nsets: 5 x 10, rest 30 s", errors: [{ message: "short", says: "Box jump: 30 s of rest between sets of jumps, at least 1 min expected. Rest longer.", remedies: 1 }] }],
});
