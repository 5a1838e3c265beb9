import { blockName } from "../../../episode";
import { exerciseOf, PRACTICE, setLinesOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const setLine = defineBlockRule({
  meta: {
    id: "set-line", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "Every exercise has a set line.",
    why: "Viewers ask how many and how heavy, and without a set line the gym clock cannot count the block.",
    source: PRACTICE,
    messages: { none: "{name}: no working set line. Write one, such as \"3 x 10, rest 60 s\"." },
  },
  check({ block, newId }, _options, report) {
    if (block.kind !== "exercise" || setLinesOf(block).some(({ set }) => set.role === "working")) return;
    const exercise = exerciseOf(block);
    const text = `2 x 10${exercise?.sides === "each side" ? " each side" : ""}, rest 60 s`;
    const timed = exercise === null || exercise.tempo === null;
    report({
      block, words: "no set line", message: "none", data: { name: blockName(block) },
      remedies: timed ? [] : [{ label: `Adds "${text}" as a start; set the numbers yourself`, edits: [{ type: "insert-set", block: block.id, at: null, set: { id: newId(), role: "working", text } }] }],
    });
  },
});
