import { blockName, findBlock } from "../../../episode";
import { fewNames } from "../../blocks";
import { defineRule } from "../../define-rule";

export const minChapterSeconds = defineRule({
  meta: {
    id: "min-chapter-seconds", version: 2, subject: "publishing", level: "consider", moment: "before publishing",
    summary: "Every block is long enough on screen to be a chapter of its own.",
    why: "Chapter lists with an entry shorter than ten seconds are commonly refused as a whole.",
    source: { title: "Common rule of video platforms: first entry 0:00, at least three entries, each at least 10 s" },
    defaults: { min: 10 },
    messages: {
      short: "{name} is {seconds} s on screen, at least {min} s expected for a chapter. Lengthen it, or join it to its neighbour.",
      several: "{names} are shorter than {min} s on screen, too short for chapters of their own. Lengthen them, or join them to their neighbours.",
    },
  },
  check({ episode, clocks }, { min }, report) {
    const short = clocks.screen.blocks.flatMap(({ block: id, seconds }) => {
      const block = findBlock(episode, id);
      return block && seconds > 0 && seconds < min ? [{ block, seconds }] : [];
    });
    const [first, ...others] = short;
    if (!first) return;
    const { block, seconds } = first;
    const words = short.map((each) => `${Math.round(each.seconds)} s`).join(", ");
    if (others.length === 0) report({ block, words, message: "short", data: { name: blockName(block), seconds: Math.round(seconds * 10) / 10, min } });
    else report({ block, words, message: "several", data: { names: fewNames(short.map((each) => blockName(each.block))), min } });
  },
});
