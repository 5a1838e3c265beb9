import { blockName } from "../../../episode";
import { workingSets } from "../../blocks";
import { setCount } from "../../../training";
import { defineBlockRule } from "../../define-rule";
import { writes } from "../../set-remedy";

export const maxReturningVolume = defineBlockRule({
  meta: {
    id: "max-returning-volume", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "People coming back after a break get little of each exercise at first.",
    why: "After a break the muscles remember the weight and have forgotten the work. A sudden jump can break muscle down so fast that it becomes an emergency.",
    source: { title: "Caterisano et al., CSCCa and NSCA consensus on transition periods, Strength Cond J, 2019 (from memory)", at: "intensity relative volume 11 to 30 in the first two weeks" },
    defaults: { most: 30 },
    messages: { much: "{name}: sets x repetitions x percentage come to {volume}, at most {most} expected for people coming back. Cut a set or the weight." },
  },
  check({ block, facts }, { most }, report) {
    if (!facts.audience.groups.includes("returning")) return;
    for (const { set, scheme } of workingSets(block)) {
      if (scheme.load?.unit !== "%1RM" || scheme.load.value === null || scheme.repsMax === undefined) continue;
      const volume = Math.round(setCount(scheme) * scheme.repsMax * scheme.load.value) / 100;
      const fewer = Math.floor((most * 100) / (scheme.repsMax * scheme.load.value));
      if (volume > most) report({ block, line: set, message: "much", data: { name: blockName(block), volume, most }, remedies: fewer >= 1 && scheme.sets !== undefined ? writes(set, { ...scheme, sets: fewer }) : [] });
    }
  },
});
