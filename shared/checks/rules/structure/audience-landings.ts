import { blockName, newLine } from "../../../episode";
import { exerciseOf, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

/** Words that offer the movement without leaving the floor. */
const ON_THE_FLOOR = /\b(?:feet (?:stay )?on the floor|without (?:the |a )?(?:jump|hop)|no (?:jump|hop)|low[- ]impact|step instead|march|calf raises?|rise onto)\b/i;

export const audienceLandings = defineBlockRule({
  meta: {
    id: "audience-landings", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "Jumps for older viewers, and for those during or after a pregnancy, come with a version that stays on the floor.",
    why: "Landings ask much of balance, bone and pelvic floor. Who looks after them decides, not a video.",
    source: { title: "ACOG Committee Opinion 804, 2020; Goom, Donnelly & Brockwell, 2019; both from memory", at: "fall risk in pregnancy; impact after a birth not before 12 weeks; for older viewers common practice" },
    messages: {
      pregnant: "{name} leaves the floor, and the episode addresses pregnant viewers. Show a version with the feet on the floor.",
      postnatal: "{name} leaves the floor, and the episode addresses viewers after a birth. Show a version with the feet on the floor.",
      older: "{name} leaves the floor, and the episode addresses older viewers. Offer a version with the feet on the floor.",
    },
  },
  check({ block, facts, newId }, _options, report) {
    const exercise = exerciseOf(block);
    const who = (["pregnant", "postnatal", "older"] as const).find((group) => facts.audience.groups.includes(group));
    if (!who || exercise?.family !== "plyometric" || exercise.id === "medicine-ball-slam") return;
    const lines = [...block.alternates, ...(["cue", "say", "caution"] as const).flatMap((kind) => wordsOf(block, kind))];
    if (lines.some(({ text }) => ON_THE_FLOOR.test(text))) return;
    const text = "Rather not jump? Rise onto the toes instead, feet on the floor, one hand on a wall.";
    report({
      block, words: exercise.id, level: who === "older" ? "consider" : "fix", message: who, data: { name: blockName(block) },
      remedies: [{ label: `Adds words: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "say", text) }] }],
    });
  },
});
