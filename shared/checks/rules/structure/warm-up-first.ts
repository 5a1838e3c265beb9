import { blockName } from "../../../episode";
import { trainingBlocks, firstOfKind } from "../../blocks";
import { defineRule } from "../../define-rule";

export const warmUpFirst = defineRule({
  meta: {
    id: "warm-up-first", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "The warm-up comes before the first exercise.",
    why: "A warm-up after the first lift prepares nobody for it.",
    source: { title: "Jeffreys, Warm-up revisited: the RAMP method, Professional Strength & Conditioning, 2007", at: "raise, activate and mobilise before the session's own moves" },
    messages: { late: "{name} comes after {exercise}, expected before it. Move it up." },
  },
  check({ episode }, _options, report) {
    const warmUp = firstOfKind(episode, "warm-up");
    const first = trainingBlocks(episode)[0];
    if (!warmUp || !first) return;
    const to = episode.blocks.indexOf(first);
    if (episode.blocks.indexOf(warmUp) < to) return;
    report({
      block: warmUp, words: "order", message: "late", data: { name: blockName(warmUp), exercise: blockName(first) },
      remedies: [{ label: `Moves ${blockName(warmUp)} before ${blockName(first)}`, edits: [{ type: "move-block", block: warmUp.id, to }] }],
    });
  },
});
