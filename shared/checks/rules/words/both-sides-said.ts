import { blockName } from "../../../episode";
import { exerciseOf, PRACTICE, wordsOf } from "../../blocks";
import { rangeOf } from "../../ranges";
import { defineBlockRule } from "../../define-rule";

const SIDE = /\b(left|right) (?:arm|leg|knee|foot|hand|elbow|hip|shoulder|side)\b/i;
/** Sides swap on screen when the coach faces the lens, and on the second half of the set. */
const BOTH = /\b(?:other|both|each|either|opposite|swap|switch|then the|change (?:sides|over))\b/i;

export const bothSidesSaid = defineBlockRule({
  meta: {
    id: "both-sides-said", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "Words for each-side work do not name one side alone.",
    why: "Facing the lens, the coach's right is the viewer's left, and the second half of every set is on the other side anyway.",
    source: PRACTICE,
    messages: { one: "{name}: \"{words}\" fits one half of the set only. Say front or back, working or free, or name both sides." },
  },
  check({ block }, _options, report) {
    if (exerciseOf(block)?.sides !== "each side") return;
    const lines = [...wordsOf(block, "cue"), ...wordsOf(block, "say")];
    const text = lines.map((line) => line.text).join(" ");
    if (BOTH.test(text) || (/\bleft\b/i.test(text) && /\bright (?:arm|leg|knee|foot|hand|elbow|hip|shoulder|side)\b/i.test(text))) return;
    for (const line of lines) {
      const match = SIDE.exec(line.text);
      if (match) report({ block, line, range: rangeOf(match), message: "one", data: { name: blockName(block), words: match[0] } });
    }
  },
});
