import { minDaysToPublish } from "../../../../../shared/checks/rules/publishing/min-days-to-publish";
import { ruleTest } from "../../rule-test";

ruleTest(minDaysToPublish, {
  valid: [
    "[talk] No day",
    { script: "[talk] In time", fields: { publish: { date: "2027-03-07", time: "12:00", zone: "Etc/UTC" }, session: { place: "", date: "2027-03-04", time: null, slotMinutes: 60, kit: [], units: "kg" as const, alone: true, cameras: 1 } } },
    { script: "[talk] Today is not past", fields: { publish: { date: "2027-03-01", time: "12:00", zone: "Etc/UTC" } } },
  ],
  invalid: [
    { script: "[opening, clip 20] Hello\nsay: Hello.\n[exercise plank] Plank\nshot: Side, full, 10 s: line\n[talk] Notes", fields: { publish: { date: "2027-03-02", time: "12:00", zone: "Etc/UTC" } }, errors: [{ message: "left", says: "One day left until publishing, and 1 of 2 blocks have no clip yet. Cut them first, or move the day." }] },
    { script: "[talk] Past", fields: { publish: { date: "2027-02-28", time: "12:00", zone: "Etc/UTC" } }, errors: [{ message: "past", level: "fix", says: "Publishing is set for 2027-02-28, which is past. Set a new day." }] },
    { script: "[talk] Close", fields: { publish: { date: "2027-03-05", time: "12:00", zone: "Etc/UTC" }, session: { place: "", date: "2027-03-04", time: null, slotMinutes: 60, kit: [], units: "kg" as const, alone: true, cameras: 1 } }, errors: [{ message: "close", says: "One day between the session and publishing, at least 2 days expected. Move one of them." }] },
  ],
});
