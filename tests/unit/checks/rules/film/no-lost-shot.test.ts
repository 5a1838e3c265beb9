import { noLostShot } from "../../../../../shared/checks/rules/film/no-lost-shot";
import { ruleTest } from "../../rule-test";

const squat = (sets: string, ...shots: string[]): string => `[exercise goblet-squat] Squat\n${sets}\n${shots.map((shot) => `shot: ${shot}`).join("\n")}`;
const session = { place: "", date: null, time: null, slotMinutes: 60, kit: [], units: "kg" as const, alone: true, cameras: 2 };

ruleTest(noLostShot, {
  valid: [
    squat("sets: 2 x 10", "Side, full, set 1: back", "Front, full, set 2: knees"),
    squat("sets: 2 x 10", "Side, full, set 1: back", "Side, full, set 1: heels"),
    squat("sets: 2 x 10", "Side, full, set 1: back", "Front, full, set 1, nice: knees"),
    squat("sets: 1 x 10", "Front, full, demo: set-up", "Side, full, set 1: back"),
    { name: "two cameras film one set from two marks", script: squat("sets: 1 x 10", "Side, full, set 1: back", "Front, full, set 1: knees"), fields: { session } },
    "[talk] Why\nshot: Front, medium: to camera\nshot: Side, medium: hands",
    "[closing]",
  ],
  invalid: [
    { script: squat("sets: 2 x 10", "Side, full, set 1: back", "Front, full, set 1: knees"), errors: [{ message: "lost", says: 'Squat: "knees" would not be filmed: set 1 is filmed from the side, head to toe.' }] },
    { script: squat("sets: 2 x 10", "Side, full, ramp-up set: back"), errors: [{ message: "lost", says: 'Squat: "back" would not be filmed: there is no ramp-up set.' }] },
  ],
});
