import { blockName } from "../../../episode";
import { exerciseOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const audiencePosition = defineBlockRule({
  meta: {
    id: "audience-position", version: 2, subject: "structure", level: "fix", moment: "before filming",
    summary: "An episode for pregnant viewers has no exercise lying flat on the back or face down.",
    why: "Long spells lying flat are commonly left out in the second half of a pregnancy. Their midwife or doctor decides, not a video.",
    source: { title: "ACOG Committee Opinion 804, 2020, from memory" },
    messages: { position: "{name} is done {position}, and the episode addresses pregnant viewers. Show another exercise or a raised version." },
  },
  check({ block, facts }, _options, report) {
    const exercise = exerciseOf(block);
    if (!exercise || !facts.audience.groups.includes("pregnant")) return;
    if (exercise.position === "lying face up" || exercise.position === "lying face down") report({ block, words: exercise.id, message: "position", data: { name: blockName(block), position: exercise.position } });
  },
});
