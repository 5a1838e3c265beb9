import { mirrors } from "../../../../../shared/checks/rules/film/mirrors";
import { ruleTest } from "../../rule-test";

ruleTest(mirrors, {
  valid: [
    "[talk] Talk\nshot: Front, medium: to camera",
    `[talk] Talk\nnote: mirrors checked\n${"shot: Side, full: one\n".repeat(6)}`,
    { name: "details show no mirror", script: `[talk] Details\n${"shot: Insert: hands\n".repeat(7)}` },
  ],
  invalid: [{ script: `[talk] Talk\n${"shot: Side, full: one\n".repeat(6)}`, errors: [{ message: "unsaid", says: "6 shots and no word about mirrors. Check each mark for what a mirror shows, and note it.", remedies: 1 }] }],
});
