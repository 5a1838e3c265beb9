import { blockName } from "../../../episode";
import { exerciseBlocks, exerciseOf, wordsOf, workingSets } from "../../blocks";
import { defineRule } from "../../define-rule";

/** Said by a coach who does it on purpose. */
const ON_PURPOSE = /\b(?:pre-?exhaust|activation|activate|on purpose|wake up)/i;

export const exerciseOrder = defineRule({
  meta: {
    id: "exercise-order", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "Multi-joint exercises come before single-joint ones for the same muscles.",
    why: "A tired small muscle gives out first in the big lift and takes its load and its technique with it.",
    source: { title: "ACSM, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 41(3), 2009", at: "exercise order" },
    yieldsTo: ["no-core-before-spine-load"],
    messages: { before: "{small} comes before {big}, and both need the {muscle}. Put {big} first." },
  },
  check({ episode }, _options, report) {
    const blocks = exerciseBlocks(episode);
    blocks.forEach((block, i) => {
      const small = exerciseOf(block);
      if (!small || small.joints !== "single" || wordsOf(block, "note").some(({ text }) => ON_PURPOSE.test(text))) return;
      for (const later of blocks.slice(i + 1)) {
        const big = exerciseOf(later);
        if (!big || big.joints !== "multi" || big.family === "core") continue;
        // A light drill before a light exercise wakes a muscle up and tires nothing.
        if (!big.rampUp && !workingSets(block).some(({ scheme }) => (scheme.load?.value ?? 0) > 0)) continue;
        const muscle = small.direct.find((each) => big.direct.includes(each) || (big.rampUp && big.indirect.includes(each)));
        if (muscle === undefined) continue;
        report({
          block, words: later.id, message: "before", data: { small: blockName(block), big: blockName(later), muscle },
          remedies: [{ label: `Moves ${blockName(block)} behind ${blockName(later)}`, edits: [{ type: "move-block", block: block.id, to: episode.blocks.indexOf(later) }] }],
        });
        return;
      }
    });
  },
});
