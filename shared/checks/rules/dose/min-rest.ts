import { blockName } from "../../../episode";
import { setCount } from "../../../training";
import { duration, exerciseOf, workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { writes } from "../../set-remedy";

export const minRest = defineBlockRule({
  meta: {
    id: "min-rest", version: 2, subject: "dose", level: "consider", moment: "before filming",
    summary: "Heavy sets of few repetitions have at least two minutes of rest.",
    why: "After a heavy set strength needs minutes to come back. Short rests turn the next set into a tired one.",
    source: { title: "NSCA Essentials of Strength Training and Conditioning, 4th ed., 2016", at: "ch. 17, rest by goal: strength, 6 repetitions or fewer, from 85 %, 2 to 5 minutes" },
    defaults: { maxReps: 6, percent: 85, seconds: 120 },
    messages: { short: "{name}: {what} with {rest} of rest, at least {min} expected. Rest longer or go lighter." },
  },
  check({ block }, { maxReps, percent, seconds }, report) {
    if (!exerciseOf(block)?.rampUp) return;
    for (const { set, scheme } of workingSets(block)) {
      const { restSeconds, load } = scheme;
      if (restSeconds === undefined || restSeconds >= seconds || setCount(scheme) < 2 || (scheme.rir ?? 0) > 4) continue;
      const share = load?.unit === "%1RM" ? load.value : null;
      const reps = scheme.reps ? Math.min(...scheme.reps) : scheme.repsMax;
      // Few repetitions with a light percentage are practice, not strength.
      const isHeavy = share === null ? reps !== undefined && reps <= maxReps : share >= percent;
      if (!isHeavy) continue;
      const what = share === null ? `${reps} heavy repetitions` : `${share} % of the best single`;
      report({ block, line: set, message: "short", data: { name: blockName(block), what, rest: duration(restSeconds), min: duration(seconds) }, remedies: writes(set, { ...scheme, restSeconds: seconds }) });
    }
  },
});
