import { blockName } from "../../../episode";
import { workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const maxTeenLoad = defineBlockRule({
  meta: {
    id: "max-teen-load", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "Teenagers are not asked for near-limit loads.",
    why: "Young lifters gain from moderate loads and tidy technique; limit attempts belong under the eyes of a qualified adult.",
    source: { title: "Faigenbaum et al., NSCA youth resistance training statement, J Strength Cond Res 23(5 Suppl), 2009 (figures from memory)", at: "1 to 3 sets of 6 to 15 repetitions" },
    defaults: { percent: 85, minReps: 4 },
    messages: {
      heavy: "{name}: {percent} % of the best single for teenagers, less than {max} % expected. Go lighter.",
      few: "{name}: sets of {reps} for teenagers, at least {min} repetitions expected. Go lighter and do more.",
    },
  },
  check({ block, facts }, { percent, minReps }, report) {
    if (!facts.audience.groups.includes("teen")) return;
    for (const { set, scheme } of workingSets(block)) {
      const name = blockName(block);
      if (scheme.load?.unit === "%1RM" && scheme.load.value !== null && scheme.load.value >= percent) report({ block, line: set, message: "heavy", data: { name, percent: scheme.load.value, max: percent } });
      else if (scheme.repsMax !== undefined && scheme.repsMax < minReps && !scheme.emomMinutes) report({ block, line: set, message: "few", data: { name, reps: scheme.repsMax, min: minReps } });
    }
  },
});
