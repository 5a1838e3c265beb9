import { blockName } from "../../../episode";
import { defineBlockRule } from "../../define-rule";

export const minCoolDownMinutes = defineBlockRule({
  meta: {
    id: "min-cool-down-minutes", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "A cool-down takes a few minutes.",
    why: "Breath and pulse take minutes to settle, not seconds.",
    source: { title: "ACSM Guidelines for Exercise Testing and Prescription (from memory)", at: "cool-down of 5 to 10 minutes; three are let pass" },
    defaults: { min: 3, usual: 5 },
    messages: { short: "{name}: {minutes} min planned, about {usual} expected. Give it more time." },
  },
  check({ block }, { min, usual }, report) {
    if (block.kind !== "cool-down" || block.minutes === null || block.minutes >= min) return;
    report({
      block, words: `${block.minutes} min`, message: "short", data: { name: blockName(block), minutes: block.minutes, usual },
      remedies: [{ label: `Sets the cool-down to ${usual} minutes`, edits: [{ type: "set-block", block: block.id, fields: { minutes: usual } }] }],
    });
  },
});
