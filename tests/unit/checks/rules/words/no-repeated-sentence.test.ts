import { noRepeatedSentence } from "../../../../../shared/checks/rules/words/no-repeated-sentence";
import { ruleTest } from "../../rule-test";

ruleTest(noRepeatedSentence, {
  valid: ["[talk] One\nsay: Take your time.\n[talk] Two\nsay: Take your time.", "[talk] One\nsay: Sit down between your heels slowly.\n[talk] Two\nsay: Stand up again as slowly."],
  invalid: [{
    name: "many times is one finding",
    script: "[talk] One\nsay: Take your time and breathe.\n[talk] Two\nsay: Take your time and breathe.\n[talk] Three\nsay: Take your time and breathe. Take your time and breathe.",
    errors: [{ message: "often", at: "Take your time and breathe.", says: "Two repeats a sentence from One, and so do 2 more lines. Cut it, or say it another way." }],
  }, { script: "[talk] One\nsay: Same weight for every single set.\n[talk] Two\nsay: Well. Same weight for every single set.", errors: [{ message: "twice", at: "Same weight for every single set.", says: "Two repeats a sentence from One. Cut it, or say it another way." }] }],
});
