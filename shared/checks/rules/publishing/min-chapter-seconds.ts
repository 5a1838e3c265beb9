import { blockName, findBlock } from "../../../episode";
import { defineRule } from "../../define-rule";

export const minChapterSeconds = defineRule({
  meta: {
    id: "min-chapter-seconds", version: 1, subject: "publishing", level: "consider", moment: "before publishing",
    summary: "Every block is long enough on screen to be a chapter of its own.",
    why: "Chapter lists with an entry shorter than ten seconds are commonly refused as a whole.",
    source: { title: "Common rule of video platforms: first entry 0:00, at least three entries, each at least 10 s" },
    defaults: { min: 10 },
    messages: { short: "{name} is {seconds} s on screen, at least {min} s expected for a chapter. Lengthen it, or join it to its neighbour." },
  },
  check({ episode, clocks }, { min }, report) {
    for (const { block: id, seconds } of clocks.screen.blocks) {
      const block = findBlock(episode, id);
      if (!block || seconds <= 0 || seconds >= min) continue;
      report({ block, words: `${Math.round(seconds)} s`, message: "short", data: { name: blockName(block), seconds: Math.round(seconds * 10) / 10, min } });
    }
  },
});
