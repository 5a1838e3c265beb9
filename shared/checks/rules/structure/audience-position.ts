import { blockName } from "../../../episode";
import { exerciseOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const audiencePosition = defineBlockRule({
  meta: {
    id: "audience-position", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "An episode for pregnant viewers has no exercise lying flat on the back, face down, or with jumps.",
    why: "Long spells lying flat and anything with a jump or a fall are commonly left out in pregnancy. Their midwife or doctor decides, not a video.",
    source: { title: "ACOG Committee Opinion 804, 2020, from memory" },
    messages: { position: "{name} is done {position}, and the episode addresses pregnant viewers. Show another exercise or a raised version." , jump: "{name} is a jump, and the episode addresses pregnant viewers. Show a version with the feet on the floor." },
  },
  check({ block, facts }, _options, report) {
    const exercise = exerciseOf(block);
    if (!exercise || !facts.audience.groups.includes("pregnant")) return;
    const name = blockName(block);
    if (exercise.family === "plyometric" && exercise.id !== "medicine-ball-slam") report({ block, words: exercise.id, message: "jump", data: { name } });
    else if (exercise.position === "lying face up" || exercise.position === "lying face down") report({ block, words: exercise.id, message: "position", data: { name, position: exercise.position } });
  },
});
