import { noContradictoryCues } from "../../../../../shared/checks/rules/words/no-contradictory-cues";
import { ruleTest } from "../../rule-test";

ruleTest(noContradictoryCues, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     cue: Elbows inside the knees
     cue: Knees out over the feet`,
    { name: "one forbids what the other forbids", script: `[exercise push-up] Push-up
      cue: Elbows in
      cue: Never let the elbows flare out` },
    { name: "two steps of one movement", script: `[exercise lateral-raise] Raise
      cue: Shoulders down before you start
      cue: Shoulders up, then down, once` },
    { name: "opposites in different exercises", script: `[exercise push-up] Push-up
      cue: Elbows in
      [exercise face-pull] Face pull
      cue: Elbows out and high` },
  ],
  invalid: [
    {
      script: `[exercise push-up] Push-up
        cue: Elbows tucked to the ribs
        cue: Hands wide, elbows out`,
      errors: [{ message: "opposed", at: "elbows out", says: "Push-up: one cue wants the elbows in, another out. Keep the one you mean.", remedies: 2 }],
    },
    {
      name: "breath on the same way",
      script: `[exercise goblet-squat] Goblet squat
        cue: Breathe in as you stand
        cue: Exhale on the way up`,
      errors: [{ message: "opposed", at: "Exhale on the way up", remedies: 2 }],
    },
    {
      name: "chin up and tucked",
      script: `[exercise deadlift] Deadlift
        cue: Tuck the chin
        cue: Chest proud, chin up`,
      errors: [{ message: "opposed", says: "Deadlift: one cue wants the chin tucked, another up. Keep the one you mean." }],
    },
  ],
});
