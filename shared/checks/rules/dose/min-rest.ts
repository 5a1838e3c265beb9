import { blockName } from "../../../episode";
import { duration, exerciseOf, workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const minRest = defineBlockRule({
  meta: {
    id: "min-rest", version: 1, subject: "dose", level: "consider", moment: "before filming",
    summary: "Heavy sets of few repetitions have at least two minutes of rest.",
    why: "After a heavy set strength needs minutes to come back. Short rests turn the next set into a tired one.",
    source: { title: "NSCA Essentials of Strength Training and Conditioning, 4th ed., 2016", at: "ch. 17, rest by goal: strength, 6 repetitions or fewer, 2 to 5 minutes" },
    defaults: { maxReps: 6, seconds: 120 },
    messages: { short: "{name}: {reps} heavy repetitions with {rest} of rest, at least {min} expected. Rest longer or go lighter." },
  },
  check({ block }, { maxReps, seconds }, report) {
    if (!exerciseOf(block)?.rampUp) return;
    for (const { set, scheme } of workingSets(block)) {
      const reps = scheme.repsMax;
      if (reps === undefined || reps > maxReps || scheme.restSeconds === undefined || scheme.restSeconds >= seconds) continue;
      if ((scheme.rir ?? 0) > 4 || (scheme.sets ?? 2) < 2) continue;
      report({ block, line: set, message: "short", data: { name: blockName(block), reps, rest: duration(scheme.restSeconds), min: duration(seconds) } });
    }
  },
});
