import { blockName, emptyBlock, newLine, type Block } from "../../../episode";
import { firstOfKind, trainingBlocks } from "../../blocks";
import { defineRule } from "../../define-rule";

export const coolDown = defineRule({
  meta: {
    id: "cool-down", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "An episode with training ends with a cool-down.",
    why: "Easy movement lets heart rate and breathing settle; stopping dead after hard work can make people dizzy.",
    source: { title: "Van Hooren & Peake, Sports Medicine 48:1575-1595, 2018" },
    defaults: { minutes: 5 },
    messages: { none: "No cool-down after {last}. Plan about {minutes} minutes of easy movement at the end." },
  },
  check({ episode, newId }, { minutes }, report) {
    const last = trainingBlocks(episode).at(-1);
    if (!last || firstOfKind(episode, "cool-down")) return;
    const block: Block = emptyBlock(newId, "cool-down", {
      title: "Cool-down", minutes,
      lines: [
        newLine(newId, "cue", "Two minutes of easy walking until you can talk in full sentences"),
        newLine(newId, "cue", "An easy stretch for what worked hardest, never into pain"),
        newLine(newId, "shot", "Side, wide, 12 s: walking, then lying down"),
      ],
    });
    report({
      block: last, words: "no cool-down", message: "none", data: { last: blockName(last), minutes },
      remedies: [{ label: `Adds a ${minutes}-minute cool-down block`, edits: [{ type: "insert-block", at: episode.blocks.indexOf(last) + 1, block }] }],
    });
  },
});
