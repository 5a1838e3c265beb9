import { maxAudienceEffort } from "../../../../../shared/checks/rules/dose/max-audience-effort";
import type { Episode } from "../../../../../shared/episode";
import { ruleTest } from "../../rule-test";

const watchedBy = (...groups: Episode["audience"]["groups"]): Partial<Episode> => ({ audience: { level: "mixed", groups } });

ruleTest(maxAudienceEffort, {
  valid: [
    { name: "nobody in particular", script: "[exercise goblet-squat] Squat\nsets: 3 x 8 @ 20 kg, RPE 9" },
    { name: "two in reserve", script: "[exercise goblet-squat] Squat\nsets: 3 x 8 @ 20 kg, RIR 2", fields: watchedBy("older") },
    { name: "no effort written", script: "[exercise goblet-squat] Squat\nsets: 3 x 8 @ 20 kg", fields: watchedBy("pregnant") },
  ],
  invalid: [
    { script: "[exercise goblet-squat] Squat\nsets: 3 x 8 @ 20 kg, RPE 10", fields: watchedBy("pregnant", "postnatal"), errors: [{ message: "hard", level: "fix", says: "Squat: RPE 10 for pregnant viewers and viewers after a birth, at least 2 repetitions in reserve expected. Ask for less.", remedies: 1 }] },
    { name: "one in reserve is worth a thought", script: "[exercise goblet-squat] Squat\nsets: 3 x 8 @ 20 kg, RIR 1", fields: watchedBy("teen"), errors: [{ message: "hard", level: "consider", remedies: 1 }] },
    { name: "as many as possible", script: "[exercise goblet-squat] Squat\nsets: 2 x AMRAP @ 20 kg", fields: watchedBy("returning"), errors: [{ message: "hard", level: "fix", remedies: 0 }] },
  ],
});
