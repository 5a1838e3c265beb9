import { bystanders } from "../../../../../shared/checks/rules/film/bystanders";
import { ruleTest } from "../../rule-test";

ruleTest(bystanders, {
  valid: [
    { name: "no place yet", script: `[opening] Opening
      shot: Front, full, 10 s: hello` },
    { name: "the note is there", script: `[opening] Opening
      note: The front desk said yes.
      shot: Front, full, 10 s: hello again`, fields: { session: { place: "Harbour Street Strength Room", date: null, time: null, slotMinutes: 60, kit: [], units: "kg", alone: true, cameras: 1 } } },
    { name: "nothing is filmed", script: "[opening] Opening", fields: { session: { place: "Harbour Street Strength Room", date: null, time: null, slotMinutes: 60, kit: [], units: "kg", alone: true, cameras: 1 } } },
  ],
  invalid: [
    { script: `[opening] Opening
        shot: Front, full, 10 s: hello`, fields: { session: { place: "Harbour Street Strength Room", date: null, time: null, slotMinutes: 60, kit: [], units: "kg", alone: true, cameras: 1 } }, errors: [{ message: "unsettled", remedies: 1 }] },
  ],
});
