import { blockName } from "../../../episode";
import { exerciseOf, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

/** What leads on to what should be done: something behind a colon, a clause that begins with an order, or a word that says so. */
const LEADS_ON = /[:;]\s*\S|(?:[,.!?]|\s[-–—])\s+(?:and |so |then )?(?:keep|stop|end|go|use|try|put|take|push|press|think|reset|lower|count|squeeze|brace|step|slow|reach|drive|pull|let|set|rest|rise)\b|\b(?:instead|rather|go lighter|end the set)\b/i;

/** A cue that begins with a prohibition. */
const FORBIDS = /^(?:don'?t|do not|never|avoid|stop)\b/i;

export const avoidRemedy = defineBlockRule({
  meta: {
    id: "avoid-remedy", version: 2, subject: "words", level: "consider", moment: "before filming",
    summary: "A fault is named, and a cue forbids, together with what to do instead.",
    why: "Told only what not to do, people do it, because that is the picture they were given.",
    source: PRACTICE,
    yieldsTo: ["no-unsafe-cue", "no-contradictory-cues", "no-disputed-claim"],
    messages: {
      bare: "{name}: \"{fault}\" is named without a way out. Add what to do instead.",
      forbids: "{name}: the cue \"{fault}\" says only what not to do. Say what to do instead.",
    },
  },
  check({ block }, _options, report) {
    if (block.kind === "exercise") {
      for (const line of wordsOf(block, "cue")) {
        if (FORBIDS.test(line.text) && !LEADS_ON.test(line.text)) report({ block, line, message: "forbids", data: { name: blockName(block), fault: line.text } });
      }
    }
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
