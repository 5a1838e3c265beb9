import { blockName } from "../../../episode";
import { trainingBlocks, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const coolDownLast = defineRule({
  meta: {
    id: "cool-down-last", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "The cool-down comes after the last exercise.",
    why: "It is there to let breath and pulse settle; hard work after it starts them up again.",
    source: PRACTICE,
    messages: { early: "{name} comes before {exercise}, expected after it. Move it down." },
  },
  check({ episode }, _options, report) {
    const coolDown = episode.blocks.findLast((block) => block.kind === "cool-down");
    const last = trainingBlocks(episode).at(-1);
    if (!coolDown || !last) return;
    const to = episode.blocks.indexOf(last);
    if (episode.blocks.indexOf(coolDown) > to) return;
    report({
      block: coolDown, words: "order", message: "early", data: { name: blockName(coolDown), exercise: blockName(last) },
      remedies: [{ label: `Moves ${blockName(coolDown)} behind ${blockName(last)}`, edits: [{ type: "move-block", block: coolDown.id, to }] }],
    });
  },
});
