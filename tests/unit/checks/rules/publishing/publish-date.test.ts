import { publishDate } from "../../../../../shared/checks/rules/publishing/publish-date";
import { ruleTest } from "../../rule-test";

ruleTest(publishDate, {
  valid: [
    "[talk] Questions",
    { name: "the same day", script: "[exercise goblet-squat] Goblet squat", fields: { publish: { date: "2027-03-04", time: "18:00", zone: "Etc/UTC" }, session: { place: "", date: "2027-03-04", time: null, slotMinutes: 60, kit: [], units: "kg", alone: true, cameras: 1 } } },
  ],
  invalid: [
    { script: "[exercise goblet-squat] Goblet squat", errors: [{ message: "none", level: "consider" }] },
    {
      name: "published before it is filmed",
      script: "[exercise goblet-squat] Goblet squat",
      fields: { publish: { date: "2027-03-01", time: "18:00", zone: "Etc/UTC" }, session: { place: "", date: "2027-03-04", time: null, slotMinutes: 60, kit: [], units: "kg", alone: true, cameras: 1 } },
      errors: [{ message: "early", level: "fix", says: "Publishing is set for 2027-03-01, the session for 2027-03-04. Move one of them." }],
    },
  ],
});
