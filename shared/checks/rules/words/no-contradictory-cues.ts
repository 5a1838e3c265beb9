import { blockName } from "../../../episode";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { OPPOSITES } from "../../opposites";
import { rangeOf } from "../../ranges";

const FORBIDS = /\b(?:don'?t|never|not|avoid|no|without|instead of|rather than)\b[^.,;]*$/i;
const TURNS = /\b(?:then|before|after|until)\b/i;

/** Where a cue says so, unless it forbids it or names it as one of two steps. */
function saying(text: string, says: RegExp): RegExpExecArray | null {
  const found = says.exec(text);
  return found && !FORBIDS.test(text.slice(0, found.index)) && !TURNS.test(text) ? found : null;
}

export const noContradictoryCues = defineBlockRule({
  meta: {
    id: "no-contradictory-cues", version: 1, subject: "words", level: "fix", moment: "before filming",
    summary: "No two cues of one exercise send the same body part opposite ways.",
    why: "A viewer who hears both does neither, or the wrong one.",
    source: PRACTICE,
    messages: { opposed: "{name}: one cue wants the {part} {one}, another {other}. Keep the one you mean." },
  },
  check({ block }, _options, report) {
    const cues = wordsOf(block, "cue");
    for (const { part, one, other } of OPPOSITES) {
      const first = cues.find(({ text }) => saying(text, one.says) && !saying(text, other.says));
      const second = cues.find(({ text }) => saying(text, other.says) && !saying(text, one.says));
      if (!first || !second) continue;
      const [earlier, later] = cues.indexOf(first) < cues.indexOf(second) ? [first, second] : [second, first];
      const at = saying(later.text, later === second ? other.says : one.says);
      report({
        block, line: later, ...(at ? { range: rangeOf(at) } : {}), message: "opposed",
        data: { name: blockName(block), part, one: earlier === first ? one.name : other.name, other: later === second ? other.name : one.name },
        remedies: [
          { label: `Removes "${later.text}"`, edits: [{ type: "remove-line", line: later.id }] },
          { label: `Removes "${earlier.text}"`, edits: [{ type: "remove-line", line: earlier.id }] },
        ],
      });
    }
  },
});
