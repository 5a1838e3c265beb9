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
    { name: "the fault forbids what the cue forbids", script: `[exercise goblet-squat] Squat
      cue: Push the knees out
      avoid: Knees falling in: push them out instead
      say: Push the knees out as you stand.` },
    { name: "the way out of a fault is no fault", script: `[exercise bench-press] Bench press
      cue: Tuck the elbows a little
      avoid: Flaring the elbows: keep the elbows close instead` },
    { name: "an unknown exercise has nothing usual", script: "[exercise] My own thing\ncue: Elbows out" },
  ],
  invalid: [
    {
      script: `[exercise push-up] Push-up
        cue: Elbows tucked to the ribs
        cue: Hands wide, elbows out`,
      errors: [{ message: "opposed", at: "elbows out", says: "Push-up: one cue wants the elbows in, another out. Keep the one you mean.", remedies: 2 }],
    },
    {
      name: "a cue and the fault to avoid",
      script: `[exercise dumbbell-bench-press] Dumbbell press
        cue: Elbows wide at the bottom
        avoid: Flaring the elbows: tuck them a little instead`,
      errors: [{ message: "forbidden", at: "Elbows wide", says: "Dumbbell press: a cue wants the elbows out, and the fault to avoid says the same: \"Flaring the elbows\". Keep the one you mean.", remedies: 2 }],
    },
    {
      name: "a cue and what is spoken",
      script: `[exercise push-up] Push-up
        cue: Elbows tucked
        say: And now let the elbows flare out. Elbows wide, that is the way.`,
      errors: [{ message: "spoken", at: "Elbows wide", says: "Push-up: a cue wants the elbows in, the words to speak out. Keep the one you mean." }],
    },
    {
      name: "what the catalogue calls a fault",
      script: `[exercise bench-press] Bench press
        cue: Flare your elbows`,
      errors: [{ message: "unusual", level: "consider", says: "Bench press: a cue wants the elbows out; \"Flaring the elbows straight out\" is usually named as a fault. Keep it if you mean it.", remedies: 1 }],
    },
    {
      name: "against the catalogue's cue",
      script: `[exercise front-rack-carry] Carry
        cue: Elbows out like wings`,
      errors: [{ message: "unusual", says: "Carry: a cue wants the elbows out; the usual cue is \"Elbows close to the ribs\". Keep it if you mean it." }],
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
