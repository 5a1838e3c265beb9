import { blockName } from "../../../episode";
import { exerciseOf, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

/** Words that lead to what should be done. */
const LEADS_ON = /[:;]|\b(?:instead|rather|then|so|keep|stop|end the set|go lighter|use|try|put|take|push|press|think|reset)\b/i;

export const avoidRemedy = defineBlockRule({
  meta: {
    id: "avoid-remedy", version: 1, subject: "words", level: "consider", moment: "before filming",
    summary: "A fault is named together with what to do instead.",
    why: "Told only what not to do, people do it, because that is the picture they were given.",
    source: PRACTICE,
    messages: { bare: "{name}: \"{fault}\" is named without a way out. Add what to do instead." },
  },
  check({ block }, _options, report) {
    for (const line of wordsOf(block, "avoid")) {
      if (LEADS_ON.test(line.text)) continue;
      const first = line.text.toLowerCase().match(/[a-z]{4,}/g) ?? [];
      const known = exerciseOf(block)?.avoid.find(({ text }) => first.filter((word) => text.toLowerCase().includes(word)).length >= 2);
      const text = known ? `${line.text.replace(/[.!]\s*$/, "")}: ${known.instead}` : null;
      report({
        block, line, message: "bare", data: { name: blockName(block), fault: line.text },
        remedies: text === null || text.length > 300 ? [] : [{ label: `Writes: ${text}`, edits: [{ type: "set-line", line: line.id, fields: { text } }] }],
      });
    }
  },
});
