import { noClaimInTitle } from "../../../../../shared/checks/rules/publishing/no-claim-in-title";
import { ruleTest } from "../../rule-test";

ruleTest(noClaimInTitle, {
  valid: [
    "[talk] No title",
    { name: "what it trains", script: "", fields: { title: "Rows, presses, carries" } },
    { name: "modest", script: "", fields: { title: "Ten minutes for a stronger back" } },
  ],
  invalid: [
    { name: "a place and a promise: one finding", script: "", fields: { title: "Melt belly fat in 7 days, guaranteed" }, errors: [{ message: "claim", at: "Melt belly fat in 7 days, guaranteed" }] },
    { name: "a cure", script: "", fields: { title: "These squats cure arthritis" }, errors: [{ message: "claim" }] },
  ],
});
