import { blockName } from "../../../episode";
import { exerciseBlocks, exerciseOf } from "../../blocks";
import { defineRule } from "../../define-rule";

export const powerFirst = defineRule({
  meta: {
    id: "power-first", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "Fast, explosive exercises come before slow strength work.",
    why: "Jumps and swings are safe while they are quick and quiet. Tired legs land hard.",
    source: { title: "NSCA Essentials of Strength Training and Conditioning, 4th ed., 2016 (from memory)", at: "exercise order: power, other core, then assistance exercises" },
    messages: { late: "{power} comes after {strength}, expected before it, while the legs are fresh. Move it up." },
  },
  check({ episode }, _options, report) {
    const blocks = exerciseBlocks(episode);
    const strength = blocks.find((block) => exerciseOf(block)?.power === false && exerciseOf(block)?.rampUp === true);
    if (!strength) return;
    const to = episode.blocks.indexOf(strength);
    for (const block of blocks) {
      if (exerciseOf(block)?.power !== true || episode.blocks.indexOf(block) < to) continue;
      report({
        block, words: strength.id, message: "late", data: { power: blockName(block), strength: blockName(strength) },
        remedies: [{ label: `Moves ${blockName(block)} before ${blockName(strength)}`, edits: [{ type: "move-block", block: block.id, to }] }],
      });
    }
  },
});
