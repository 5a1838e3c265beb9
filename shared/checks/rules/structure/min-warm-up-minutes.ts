import { blockName } from "../../../episode";
import { defineBlockRule } from "../../define-rule";

export const minWarmUpMinutes = defineBlockRule({
  meta: {
    id: "min-warm-up-minutes", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "A warm-up takes at least five minutes.",
    why: "It takes a few minutes of easy movement before breathing, temperature and joints are ready for load.",
    source: { title: "ACSM Guidelines and NSCA Essentials, general warm-up of 5 to 10 minutes" },
    defaults: { min: 5 },
    messages: { short: "{name}: {minutes} min planned, at least {min} expected. Give it {more} min more." },
  },
  check({ block }, { min }, report) {
    if (block.kind !== "warm-up" || block.minutes === null || block.minutes >= min) return;
    report({
      block, words: `${block.minutes} min`, message: "short",
      data: { name: blockName(block), minutes: block.minutes, min, more: Math.round((min - block.minutes) * 10) / 10 },
      remedies: [{ label: `Sets the warm-up to ${min} minutes`, edits: [{ type: "set-block", block: block.id, fields: { minutes: min } }] }],
    });
  },
});
