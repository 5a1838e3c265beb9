import { blockName } from "../../../episode";
import { exerciseOf, PRACTICE, setLinesOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { parseSetLine } from "../../../training";

/** Where "each side" goes: behind the work, in front of load, tempo and rest. */
function withEachSide(text: string): string {
  const cut = /\s*(?:@|,|\bat\b|\bwith\b|\brest\b|\btempo\b)/i.exec(text);
  const inside = cut ? `${text.slice(0, cut.index)} each side${text.slice(cut.index)}` : `${text.trimEnd()} each side`;
  const read = parseSetLine(inside);
  return read.ok && read.scheme.eachSide ? inside : `${text.trimEnd()}, each side`;
}

export const bothSides = defineBlockRule({
  meta: {
    id: "both-sides", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "A one-sided exercise says \"each side\" in its set line.",
    why: "Without it viewers train one side, and the gym clock counts half the time.",
    source: PRACTICE,
    messages: { oneSide: "{name}: \"{text}\" counts one side only. Write each side." },
  },
  check({ block }, _options, report) {
    if (exerciseOf(block)?.sides !== "each side") return;
    for (const { set, parse } of setLinesOf(block)) {
      if (!parse.ok || parse.scheme.eachSide || parse.scheme.emomMinutes !== undefined) continue;
      const text = withEachSide(set.text);
      const read = parseSetLine(text);
      report({
        block, line: set, message: "oneSide", data: { name: blockName(block), text: set.text },
        remedies: read.ok && read.scheme.eachSide ? [{ label: `Writes "${text}"`, edits: [{ type: "set-set", set: set.id, fields: { text } }] }] : [],
      });
    }
  },
});
