import { maxMustMarks } from "../../../../../shared/checks/rules/film/max-must-marks";
import { ruleTest } from "../../rule-test";

ruleTest(maxMustMarks, {
  valid: [
    "[exercise goblet-squat] Squat\nsets: 2 x 10\nshot: Side, full: back\nshot: Front, full: knees\nshot: Insert: feet",
    "[exercise goblet-squat] Squat\nsets: 1 x 10\nshot: Side, full: back\nshot: Front, full, nice: knees",
    { name: "two cameras film two marks a set", script: "[exercise goblet-squat] Squat\nsets: 1 x 10\nshot: Side, full: back\nshot: Front, full: knees", fields: { session: { place: "", date: null, time: null, slotMinutes: 60, kit: [], units: "kg", alone: true, cameras: 2 } } },
    "[exercise goblet-squat] Squat\nshot: Side, full: back\nshot: Front, full: knees",
  ],
  invalid: [{ script: "[exercise goblet-squat] Squat\nsets: 1 x 10\nshot: Side, full: back\nshot: Front, full: knees", errors: [{ message: "many", says: "Squat: 2 must-have marks and one set for one camera. Make one nice to have, add a light set, or film a demonstration." }] }],
});
