import { blockName } from "../../../episode";
import { marksOf, printShotLine, type Shot } from "../../../filming";
import { plannedSets } from "../../../training";
import { listed, PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

/** Inserts and demonstrations are filmed between sets, so they need none. */
const isMust = (shot: Shot): boolean => shot.need === "must" && shot.on !== "demonstration" && shot.angle !== "insert";

export const maxMustMarks = defineBlockRule({
  meta: {
    id: "max-must-marks", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "There are no more must-have marks than sets to film them on.",
    why: "A camera stands in one place during a set. What has no set of its own is not filmed.",
    source: PRACTICE,
    yieldsTo: ["unreadable-set-line"],
    messages: { many: "{name}: {marks} must-have marks and {sets} for {cameras}. Make one nice to have, add a light set, or film a demonstration." },
  },
  check({ block, facts }, _options, report) {
    const sets = plannedSets(block).length;
    if (block.kind !== "exercise" || sets === 0) return;
    const { cameras } = facts.session;
    const room = sets * cameras;
    const marks = marksOf(block).map(({ shots }) => shots.filter(({ shot }) => isMust(shot))).filter((shots) => shots.length > 0);
    if (marks.length <= room) return;
    const beyond = marks.slice(room).flat();
    report({
      block, words: `${marks.length} marks`, message: "many", data: { name: blockName(block), marks: marks.length, sets: sets === 1 ? "one set" : `${sets} sets`, cameras: cameras === 1 ? "one camera" : "two cameras" },
      remedies: [{
        label: `Makes nice to have: ${listed(beyond.map(({ shot }) => shot.subject || printShotLine(shot)))}`,
        edits: beyond.map(({ line, shot }) => ({ type: "set-line" as const, line: line.id, fields: { text: printShotLine({ ...shot, need: "nice" }) } })),
      }],
    });
  },
});
