import { blockName } from "../../../episode";
import { repsLeft, workingSets } from "../../blocks";
import { rpePercent } from "../../../training";
import { defineBlockRule } from "../../define-rule";

export const effortAtPercent = defineBlockRule({
  meta: {
    id: "effort-at-percent", version: 1, subject: "dose", level: "consider", moment: "before filming",
    summary: "Percentage, repetitions and effort of a set line can hold at once.",
    why: "Three numbers say how hard a set is, and two decide the third. When they disagree, viewers follow the heaviest.",
    source: { title: "Tuchscherer, The Reactive Training Manual, 2008 (chart in common use, an estimate)", at: "repetitions and effort to percent; together up to 10" },
    yieldsTo: ["reps-at-percent"],
    defaults: { slack: 6 },
    messages: { apart: "{name}: {reps} repetitions with {rir} in reserve are about {expected} % of the best single, the line says {percent} %. Change one of the three." },
  },
  check({ block }, { slack }, report) {
    for (const { set, scheme } of workingSets(block)) {
      const { load, repsMin, repsMax } = scheme;
      const rir = repsLeft(scheme);
      if (load?.unit !== "%1RM" || load.value === null || rir === null || repsMin === undefined || repsMax === undefined) continue;
      if (repsMax + rir > 10 || rir > 4 || !Number.isInteger(rir * 2)) continue;
      const [hard, easy] = [rpePercent(repsMin, 10 - rir), rpePercent(repsMax, 10 - rir)];
      if (load.value <= hard + slack && load.value >= easy - 2 * slack) continue;
      report({ block, line: set, message: "apart", data: { name: blockName(block), reps: repsMin === repsMax ? repsMin : `${repsMin} to ${repsMax}`, rir, expected: Math.round((hard + easy) / 2), percent: load.value } });
    }
  },
});
