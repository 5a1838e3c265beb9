import { blockName } from "../../../episode";
import { exerciseById, type Equipment } from "../../../exercises";
import { exerciseOf, PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

/** What a public gym has few of. */
const SCARCE: readonly Equipment[] = [
  "rack", "bench", "incline bench", "cable", "landmine", "trap bar", "machine", "leg press", "pulldown", "pull-up bar", "dip bars", "back-extension bench", "sled",
];

export const alternate = defineBlockRule({
  meta: {
    id: "alternate", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "An exercise at a busy station has something to do when it is taken.",
    why: "There is one take and the gym is full. Viewers meet the same queue at home.",
    source: PRACTICE,
    messages: { none: "{name}: the {equipment} may be taken, and nothing is planned for then. Add an alternate." },
  },
  check({ block, newId }, _options, report) {
    const exercise = exerciseOf(block);
    const equipment = exercise?.equipment.find((each) => SCARCE.includes(each));
    if (!exercise || equipment === undefined || block.alternates.some(({ text }) => text.trim() !== "")) return;
    const swap = exercise.substitutes.find((each) => each.without === equipment) ?? exercise.substitutes[0];
    const other = swap ? exerciseById(swap.exercise) : null;
    report({
      block, words: "no alternate", message: "none", data: { name: blockName(block), equipment },
      remedies: other ? [{ label: `Adds: if taken, ${other.name}`, edits: [{ type: "insert-alternate", block: block.id, at: null, alternate: { id: newId(), text: other.name } }] }] : [],
    });
  },
});
