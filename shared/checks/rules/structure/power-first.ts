import { blockName } from "../../../episode";
import { exerciseBlocks, exerciseOf, listed } from "../../blocks";
import { defineRule } from "../../define-rule";

export const powerFirst = defineRule({
  meta: {
    id: "power-first", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "Fast, explosive exercises come before slow strength work.",
    why: "Jumps and swings are safe while they are quick and quiet. Tired legs land hard.",
    source: { title: "NSCA Essentials of Strength Training and Conditioning, 4th ed., 2016 (from memory)", at: "exercise order: power, other core, then assistance exercises" },
    messages: { late: "{power} {come} after {strength}, expected before it, while the legs are fresh. Move {them} up." },
  },
  check({ episode }, _options, report) {
    const blocks = exerciseBlocks(episode);
    const strength = blocks.find((block) => exerciseOf(block)?.power === false && exerciseOf(block)?.rampUp === true);
    if (!strength) return;
    const to = episode.blocks.indexOf(strength);
    const late = blocks.filter((block) => exerciseOf(block)?.power === true && episode.blocks.indexOf(block) > to);
    const [first] = late;
    if (!first) return;
    const names = listed(late.map(blockName));
    report({
      block: first, words: strength.id, message: "late",
      data: { power: names, come: late.length === 1 ? "comes" : "come", them: late.length === 1 ? "it" : "them", strength: blockName(strength) },
      remedies: [{ label: `Moves ${names} before ${blockName(strength)}`, edits: late.map(({ id }, i) => ({ type: "move-block" as const, block: id, to: to + i })) }],
    });
  },
});
