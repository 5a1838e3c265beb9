import { blockName } from "../../../episode";
import { exerciseBlocks, exerciseOf, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const noCoreBeforeSpineLoad = defineRule({
  meta: {
    id: "no-core-before-spine-load", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "Tiring trunk work does not come before lifts that load the spine.",
    why: "The trunk holds the back's shape in a heavy lift. Tire it first and it lets go under the bar.",
    source: PRACTICE,
    messages: { before: "{core} comes before {lift}, which loads the spine. Put {lift} first." },
  },
  check({ episode }, _options, report) {
    const blocks = exerciseBlocks(episode);
    blocks.forEach((block, i) => {
      if (exerciseOf(block)?.family !== "core") return;
      const lift = blocks.slice(i + 1).findLast((later) => exerciseOf(later)?.spineLoaded === true);
      if (!lift) return;
      report({
        block, words: lift.id, message: "before", data: { core: blockName(block), lift: blockName(lift) },
        remedies: [{ label: `Moves ${blockName(block)} behind ${blockName(lift)}`, edits: [{ type: "move-block", block: block.id, to: episode.blocks.indexOf(lift) }] }],
      });
    });
  },
});
