import { blockName } from "../../../episode";
import { PRACTICE, workingSets } from "../../blocks";
import { setSeconds } from "../../../training";
import { defineBlockRule } from "../../define-rule";

export const maxWorkInMinute = defineBlockRule({
  meta: {
    id: "max-work-in-minute", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "Work on every minute fits in the minute.",
    why: "The rest is what is left of the minute. When nothing is left the clock drives the technique.",
    source: PRACTICE,
    defaults: { seconds: 50 },
    messages: { long: "{name}: the work of each minute takes about {work} s, at most {max} s expected. Fewer repetitions or a quicker tempo." },
  },
  check({ block }, { seconds }, report) {
    for (const { set, scheme } of workingSets(block)) {
      const { emomMinutes, ...once } = scheme;
      if (emomMinutes === undefined) continue;
      const { work } = setSeconds({ ...once, sets: 1 }, 1);
      if (work > seconds) report({ block, line: set, message: "long", data: { name: blockName(block), work: Math.round(work), max: seconds } });
    }
  },
});
