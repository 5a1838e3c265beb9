import { blockName, findBlock } from "../../../episode";
import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const wordsOverClip = defineRule({
  meta: {
    id: "words-over-clip", version: 1, subject: "words", level: "fix", moment: "before speaking",
    summary: "The voiceover of a block fits over its clip.",
    why: "Words that run past the picture are rushed or cut, and there is no more footage to stretch.",
    source: PRACTICE,
    messages: { over: "{name}: {spoken} s of words over a {clip} s clip. Cut about {cut} words." },
  },
  check({ episode, clocks }, _options, report) {
    for (const clock of clocks.screen.blocks) {
      const block = findBlock(episode, clock.block);
      if (!block || clock.clipSeconds === null || clock.overSeconds <= 0) continue;
      const enough = Math.ceil(clock.clipSeconds + clock.overSeconds);
      report({
        block, words: `${Math.round(clock.spoken.seconds)} s over ${clock.clipSeconds} s`, message: "over",
        data: { name: blockName(block), spoken: Math.round(clock.spoken.seconds), clip: clock.clipSeconds, cut: Math.max(1, clock.wordsToCut) },
        remedies: [{ label: `Plans a clip of ${enough} s, if there is footage for it`, edits: [{ type: "set-block", block: block.id, fields: { clipSeconds: enough } }] }],
      });
    }
  },
});
