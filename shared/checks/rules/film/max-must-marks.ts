import { blockName } from "../../../episode";
import { marksOf } from "../../../filming";
import { plannedSets } from "../../../training";
import { PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const maxMustMarks = defineBlockRule({
  meta: {
    id: "max-must-marks", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "There are no more must-have marks than sets to film them on.",
    why: "A camera stands in one place during a set. What has no set of its own is not filmed.",
    source: PRACTICE,
    yieldsTo: ["unreadable-set-line"],
    messages: { many: "{name}: {marks} must-have marks and {sets} sets for {cameras}. Make one nice to have, add a light set, or film a demonstration." },
  },
  check({ block, facts }, _options, report) {
    const sets = plannedSets(block).length;
    if (block.kind !== "exercise" || sets === 0) return;
    const { cameras } = facts.session;
    // Inserts and demonstrations are filmed between sets, so they need none.
    const marks = marksOf(block).filter(({ shots }) => shots.some(({ shot }) => shot.need === "must" && shot.on !== "demonstration" && shot.angle !== "insert")).length;
    if (marks <= sets * cameras) return;
    report({ block, words: `${marks} marks`, message: "many", data: { name: blockName(block), marks, sets, cameras: cameras === 1 ? "one camera" : "two cameras" } });
  },
});
