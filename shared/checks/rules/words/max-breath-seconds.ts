import { blockName } from "../../../episode";
import { breaths } from "../../../speech";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const maxBreathSeconds = defineBlockRule({
  meta: {
    id: "max-breath-seconds", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "A sentence to speak fits in one breath, or has a breath marked.",
    why: "A sentence longer than a breath is read with a gasp in the wrong place, and the take is repeated.",
    source: PRACTICE,
    defaults: { seconds: 10 },
    messages: { long: "{name}: {seconds} s without a pause, at most {max} s expected. Split the sentence or mark a breath with \" / \"." },
  },
  check({ block }, { seconds: max }, report) {
    for (const line of wordsOf(block, "say")) {
      const longest = Math.max(0, ...breaths(line.text, undefined, Number.MAX_SAFE_INTEGER).map(({ seconds }) => seconds));
      if (longest <= max) continue;
      const marked = breaths(line.text, undefined, max).map(({ text, breathAfter }) => text + (breathAfter === "marked" || breathAfter === "suggested" ? " /" : "")).join(" ");
      report({
        block, line, message: "long", data: { name: blockName(block), seconds: Math.round(longest), max },
        remedies: marked === line.text || marked.length > 4000 ? [] : [{ label: "Marks breaths where commas and joining words allow", edits: [{ type: "set-line", line: line.id, fields: { text: marked } }] }],
      });
    }
  },
});
