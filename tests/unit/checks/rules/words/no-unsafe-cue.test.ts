import { noUnsafeCue } from "../../../../../shared/checks/rules/words/no-unsafe-cue";
import { ruleTest } from "../../rule-test";

ruleTest(noUnsafeCue, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     cue: Knees travel in line with the toes
     say: Never let your back round, and don't push through pain.`,
    { name: "faults may be named where faults belong", script: `[exercise goblet-squat] Goblet squat
      avoid: Letting the knees fall in on the way up: push the floor apart instead` },
    { name: "notes are for the coach alone", script: `[talk] Talk
      note: bounce the idea off Sam` },
    { name: "a loose back in the cool-down", script: `[cool-down] Cool-down
      cue: Let your spine round and hang, nothing in your hands` },
  ],
  invalid: [
    { script: `[exercise deadlift] Deadlift
        cue: Let your lower back round as you reach for the bar`, errors: [{ message: "spine-under-load" }] },
    { script: `[exercise leg-press] Leg press
        cue: Snap the knees straight at the top`, errors: [{ message: "joint-lockout" }] },
    { script: `[exercise back-squat] Back squat
        say: Hold your breath for the whole set.`, errors: [{ message: "breath-hold" }] },
    { script: `[exercise back-squat] Back squat
        say: Push through the pain.`, errors: [{ message: "pain-push" }] },
    { script: `[exercise bench-press] Bench press
        cue: Bounce the bar off your chest`, errors: [{ message: "ballistic-or-bounce" }] },
    { script: `[exercise lat-pulldown] Lat pulldown
        cue: Pull the bar down behind the neck`, errors: [{ message: "neck-position" }] },
    { script: `[exercise goblet-squat] Goblet squat
        cue: Let your knees cave in on the way up`, errors: [{ message: "knee-tracking" }] },
    { script: `[exercise overhead-press] Overhead press
        cue: Arch your back to get the bar up`, errors: [{ message: "overextension" }] },
    { script: `[exercise deadlift] Deadlift
        say: Today we double the weight.`, errors: [{ message: "load-jump" }] },
    { script: `[exercise bench-press] Bench press
        say: You can max out without a spotter.`, errors: [{ message: "no-spotter" }] },
    { script: `[exercise deadlift] Deadlift
        say: Form doesn't matter on the last ones.`, errors: [{ message: "failure-unsafe" }] },
    { script: `[exercise crunch] Crunch
        say: This burns belly fat.`, errors: [{ message: "claim-spot-reduction" }] },
    { script: `[exercise crunch] Crunch
        say: I guarantee visible results.`, errors: [{ message: "claim-guarantee" }] },
    { script: `[exercise crunch] Crunch
        say: This move cures back pain.`, errors: [{ message: "claim-medical" }] },
    { script: `[exercise crunch] Crunch
        say: Skip dinner after this one.`, errors: [{ message: "diet-extreme" }] },
    { script: `[exercise push-up] Push up
        say: That was pathetic.`, errors: [{ message: "shame" }] },
    { script: `[exercise crunch] Crunch
        say: Use my code at the checkout.`, errors: [{ message: "disclosure-missing" }] },
    {
      name: "a particular risk for the people addressed",
      script: `[exercise step-up] Step-up
        cue: Let go of the rail and shut your eyes`,
      fields: { audience: { level: "mixed", groups: ["older"] } },
      errors: [{ message: "population-risk", level: "stop" }],
    },
    {
      name: "the catalogue's own cue is offered in its place",
      script: `[exercise goblet-squat] Goblet squat
        cue: Knees can fall inward as you stand`,
      errors: [{ message: "knee-tracking", level: "stop", at: "Knees can fall inward", remedies: 2 }],
    },
  ],
});
