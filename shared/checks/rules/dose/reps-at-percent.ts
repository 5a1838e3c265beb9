import { blockName } from "../../../episode";
import { workingSets } from "../../blocks";
import { rpePercent } from "../../../training";
import { defineBlockRule } from "../../define-rule";

export const repsAtPercent = defineBlockRule({
  meta: {
    id: "reps-at-percent", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "The repetitions asked for can be done at the percentage asked for.",
    why: "A plan that cannot be lifted is a misprint on a hundred handouts, or somebody under a bar trying.",
    source: { title: "Tuchscherer, The Reactive Training Manual, 2008 (chart in common use, an estimate)", at: "repetitions and percent of one-repetition maximum; up to 10 repetitions" },
    defaults: { slack: 4 },
    messages: { impossible: "{name}: {reps} repetitions at {percent} % of the best single, about {most} % can be lifted that often. Lower one of them." },
  },
  check({ block }, { slack }, report) {
    for (const { set, scheme } of workingSets(block)) {
      const { load, repsMin } = scheme;
      if (load?.unit !== "%1RM" || load.value === null || repsMin === undefined || repsMin > 10) continue;
      const most = rpePercent(repsMin, 10);
      // People differ widely at the same percentage, so only what is far off is said.
      if (load.value <= most + slack) continue;
      report({ block, line: set, message: "impossible", data: { name: blockName(block), reps: repsMin, percent: load.value, most } });
    }
  },
});
