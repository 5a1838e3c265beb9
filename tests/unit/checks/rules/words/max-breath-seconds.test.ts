import { maxBreathSeconds } from "../../../../../shared/checks/rules/words/max-breath-seconds";
import { ruleTest } from "../../rule-test";

ruleTest(maxBreathSeconds, {
  valid: ["[talk] Talk\nsay: A short one. And another short one.", "[talk] Talk\ncue: " + "word ".repeat(80)],
  invalid: [{ script: "[talk] Talk\nsay: We walk down to the harbour with the bags on our backs and we keep on walking past the boats and the nets and the gulls until the road goes up and nobody has any breath left to say another single word about it.", errors: [{ message: "long", remedies: 1 }] }],
});
