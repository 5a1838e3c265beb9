import { blockName, type SetLine } from "../../../episode";
import { parseSetLine } from "../../../training";
import { PRACTICE, setLinesOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import type { Remedy } from "../../types";

/** Without its capital, unless that is a short form: "RPE". */
const lower = (text: string): string => (/^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text);

/** The line without one of its parts, where that makes it readable. */
function without({ id, text }: SetLine): Remedy[] {
  const parts = text.split(",");
  return parts.flatMap((_, left): Remedy[] => {
    const shorter = parts.filter((_part, i) => i !== left).join(",").trim();
    const read = parseSetLine(shorter);
    return read.ok && read.scheme.sets !== undefined ? [{ label: `Writes "${shorter}"`, edits: [{ type: "set-set", set: id, fields: { text: shorter } }] }] : [];
  });
}

export const unreadableSetLine = defineBlockRule({
  meta: {
    id: "unreadable-set-line", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "Every set line can be read.",
    why: "A set line that cannot be read counts no time and prints wrongly for the viewer.",
    source: PRACTICE,
    reach: "block",
    messages: { unreadable: "{name}: \"{text}\" cannot be read: {error}. Write it like \"3 x 8-10 @ 40 kg, rest 90 s\"." },
  },
  check({ block }, _options, report) {
    for (const { set, parse } of setLinesOf(block)) {
      if (parse.ok) continue;
      report({
        block, line: set, range: { start: parse.at, end: parse.at + Math.max(1, parse.length) }, message: "unreadable",
        data: { name: blockName(block), text: set.text, error: lower(parse.error.replace(/[.\s]+$/, "")) }, remedies: without(set),
      });
    }
  },
});
