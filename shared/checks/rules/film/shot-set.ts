import { blockName } from "../../../episode";
import { printShotLine, shotsOf } from "../../../filming";
import { plannedSets } from "../../../training";
import { PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const shotSet = defineBlockRule({
  meta: {
    id: "shot-set", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "A shot names a set that is done.",
    why: "A shot planned for a fourth of three sets is found missing at home.",
    source: PRACTICE,
    yieldsTo: ["unreadable-set-line"],
    messages: { beyond: "{name}: a shot is planned for set {set}, and there are {sets}. Film it on another set." },
  },
  check({ block }, _options, report) {
    const sets = plannedSets(block).filter(({ role }) => role === "working").length;
    if (sets === 0) return;
    for (const { line, shot } of shotsOf(block)) {
      const set = shot.on === "ramp-up" ? undefined : shot.sets?.find((each) => each > sets);
      if (set !== undefined) report({ block, line, message: "beyond", data: { name: blockName(block), set, sets }, remedies: [{ label: `Films it on set ${sets}`, edits: [{ type: "set-line", line: line.id, fields: { text: printShotLine({ ...shot, sets: [...(shot.sets ?? []).filter((each) => each < sets), sets] }) } }] }] });
    }
  },
});
