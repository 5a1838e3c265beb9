import { noFailureAlone } from "../../../../../shared/checks/rules/dose/no-failure-alone";
import { ruleTest } from "../../rule-test";

ruleTest(noFailureAlone, {
  valid: [
    `[exercise bench-press] Bench press
     sets: 3 x 5 @ 60 kg, RIR 3`,
    { name: "with somebody there", script: `[exercise bench-press] Bench press
      sets: 1 x AMRAP @ 60 kg`, fields: { session: { place: "", date: null, time: null, slotMinutes: 60, kit: [], units: "kg", alone: false, cameras: 1 } } },
    { name: "the caution names the safety arms", script: `[exercise bench-press] Bench press
      sets: 3 x 5 @ 60 kg, RPE 9.5
      caution: Safety arms just under the chest line` },
    { name: "nothing to be pinned by", script: `[exercise push-up] Push-up
      sets: 3 x AMRAP` },
  ],
  invalid: [
    {
      script: `[exercise bench-press] Bench press
        sets: 3 x 5 @ 60 kg, RPE 9.5`,
      errors: [{ message: "alone", level: "stop", says: "Bench press: RPE 9.5, alone, and no caution names a spotter, safety arms or pins. Add one, or keep two repetitions in reserve.", remedies: 1 }],
    },
    {
      name: "as many as possible, and a caution about something else",
      script: `[exercise back-squat] Back squat
        sets: 1 x AMRAP @ 60 kg
        caution: Knee pain: stop`,
      errors: [{ message: "alone", remedies: 1 }],
    },
    {
      name: "one repetition in reserve",
      script: `[exercise bench-press] Bench press
        sets: 2 x 5 @ 60 kg, RIR 1`,
      errors: [{ message: "alone", level: "stop" }],
    },
  ],
});
