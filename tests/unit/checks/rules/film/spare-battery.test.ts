import { spareBattery } from "../../../../../shared/checks/rules/film/spare-battery";
import { ruleTest } from "../../rule-test";

ruleTest(spareBattery, {
  valid: [
    "[exercise goblet-squat] Squat\nshot: Side, full, 20 s: back",
    { script: "[talk] Long\nshot: Front, wide, 4300 s: everything", fields: { session: { place: "", date: null, time: null, slotMinutes: 60, kit: ["Power bank"], units: "kg", alone: true, cameras: 1 } } },
  ],
  invalid: [{ script: "[talk] Long\nshot: Front, wide, 4400 s: everything", errors: [{ message: "low", remedies: 1 }] }],
});
