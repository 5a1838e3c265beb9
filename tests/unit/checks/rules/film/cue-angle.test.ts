import { cueAngle } from "../../../../../shared/checks/rules/film/cue-angle";
import { ruleTest } from "../../rule-test";

ruleTest(cueAngle, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     cue: Sit between the heels, elbows inside the knees
     shot: Front, full, 15 s: knees over toes`,
    { name: "a cue of the coach's own", script: `[exercise goblet-squat] Goblet squat
      cue: Smile
      shot: Rear, full, 15 s: the back` },
    { name: "an open angle may be any", script: `[exercise goblet-squat] Goblet squat
      cue: Sit between the heels, elbows inside the knees
      shot: Full, 15 s: all of it` },
    { name: "no shots is another rule's matter", script: `[exercise goblet-squat] Goblet squat
      cue: Sit between the heels, elbows inside the knees` },
  ],
  invalid: [
    {
      script: `[exercise goblet-squat] Goblet squat
        cue: Sit between the heels, elbows inside the knees
        shot: Rear, full, 15 s: the back`,
      errors: [{ message: "unseen", says: "Goblet squat: \"Sit between the heels, elbows inside the knees\" shows from the front or three-quarter, and no shot is planned from there. Add one, or move a camera.", remedies: 1 }],
    },
  ],
});
