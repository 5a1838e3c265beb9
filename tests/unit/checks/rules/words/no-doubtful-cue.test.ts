import { noDoubtfulCue } from "../../../../../shared/checks/rules/words/no-doubtful-cue";
import { ruleTest } from "../../rule-test";

ruleTest(noDoubtfulCue, {
  valid: [
    { name: "vivid and sound", script: `[exercise deadlift] Deadlift
      cue: Push the floor away and let the bar drag up your shins` },
    { name: "said in plain words, which another rule knows", script: `[exercise deadlift] Deadlift
      say: Let your back round as the bar comes up.` },
    { name: "notes are for the coach alone", script: `[exercise deadlift] Deadlift
      note: Hang off the bar like washing.` },
  ],
  invalid: [
    { script: `[exercise deadlift] Deadlift
      cue: Hang off the bar like washing.`,
      errors: [{ message: "resembles", at: "Hang off the bar like washing.", level: "consider", says: 'Deadlift: "Hang off the bar like washing." reads like lines that let the low back give way under load. Say it plainly, or set this aside if you mean something else.' }] },
  ],
});
