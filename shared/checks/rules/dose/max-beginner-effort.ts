import { blockName } from "../../../episode";
import { effortSaid, exerciseOf, repsLeft, workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const maxBeginnerEffort = defineBlockRule({
  meta: {
    id: "max-beginner-effort", version: 1, subject: "dose", level: "consider", moment: "before filming",
    summary: "Beginners are not asked for their last repetition in big lifts.",
    why: "Beginners misjudge how much is left, and their technique goes before their strength does.",
    source: { title: "Hackett et al., J Strength Cond Res 31(8), 2017", at: "accuracy of repetitions in reserve" },
    yieldsTo: ["no-failure-alone", "max-audience-effort"],
    defaults: { minReserve: 1 },
    messages: { last: "{name}: beginners are asked for {effort}, at least {min} repetition in reserve expected. Leave more." },
  },
  check({ block, facts }, { minReserve }, report) {
    const exercise = exerciseOf(block);
    if (facts.audience.level !== "beginner" || exercise?.joints !== "multi" || !exercise.rampUp) return;
    for (const { set, scheme } of workingSets(block)) {
      const left = repsLeft(scheme);
      if (left === null || left >= minReserve) continue;
      report({ block, line: set, message: "last", data: { name: blockName(block), effort: effortSaid(scheme), min: minReserve } });
    }
  },
});
