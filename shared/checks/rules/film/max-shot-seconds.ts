import { blockName } from "../../../episode";
import { printShotLine, shotsOf } from "../../../filming";
import { plannedSets } from "../../../training";
import { PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const maxShotSeconds = defineBlockRule({
  meta: {
    id: "max-shot-seconds", version: 1, subject: "film", level: "consider", moment: "before filming",
    summary: "A shot is not much longer than the set it is filmed on.",
    why: "Nobody adds repetitions for the camera. The cut has to make do with what the set gave.",
    source: PRACTICE,
    yieldsTo: ["unreadable-set-line", "shot-set"],
    // The camera may run a little before and after.
    defaults: { lead: 6 },
    messages: { long: "{name}: a shot of {shot} s on a set that takes about {set} s. Shorten it, or film it on two sets." },
  },
  check({ block }, { lead }, report) {
    const working = plannedSets(block).filter(({ role }) => role === "working");
    for (const { line, shot } of shotsOf(block)) {
      if (shot.seconds === null || shot.sets?.length !== 1) continue;
      const set = working[(shot.sets[0] ?? 0) - 1];
      if (set && shot.seconds > set.workSeconds + lead) report({ block, line, message: "long", data: { name: blockName(block), shot: shot.seconds, set: set.workSeconds }, remedies: [{ label: `Makes it ${set.workSeconds} s, as long as the set`, edits: [{ type: "set-line", line: line.id, fields: { text: printShotLine({ ...shot, seconds: set.workSeconds }) } }] }] });
    }
  },
});
