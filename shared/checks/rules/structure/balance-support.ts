import { blockName, newLine } from "../../../episode";
import { exerciseOf, PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

const STEADY = /\b(?:rail|wall|chair|counter|table|rack|post|support|stick|pole|hand on|hold (?:on|onto)|holding (?:on|onto)|steady|within reach)\b/i;

export const balanceSupport = defineBlockRule({
  meta: {
    id: "balance-support", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "Work on one leg for older viewers names something to hold.",
    why: "Most falls happen in the first tries. A hand on something steady costs nothing and can be taken away later.",
    source: PRACTICE,
    messages: { none: "{name} is done on one leg, the episode addresses older viewers, and nothing to hold is named. Name a wall, a rail or a chair." },
  },
  check({ block, facts, newId }, _options, report) {
    const exercise = exerciseOf(block);
    if (!exercise || !facts.audience.groups.includes("older")) return;
    const onOneLeg = (exercise.family === "lunge-step" || exercise.id.startsWith("single-leg")) && (exercise.position === "standing" || exercise.position === "walking");
    if (!onOneLeg || [{ text: block.title }, ...block.lines, ...block.alternates].some(({ text }) => STEADY.test(text))) return;
    const text = "Unsteady today: one hand on a wall, a rail or a chair that cannot slide";
    report({ block, words: "nothing to hold", message: "none", data: { name: blockName(block) }, remedies: [{ label: `Adds a caution: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "caution", text) }] }] });
  },
});
