import { blockName, newLine, type Line } from "../../../episode";
import { cueWantsOf, printShotLine } from "../../../filming";
import { listed, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const cueAngle = defineBlockRule({
  meta: {
    id: "cue-angle", version: 1, subject: "film", level: "consider", moment: "before filming",
    summary: "Each cue can be seen from at least one of the planned shots.",
    why: "A cue that no angle shows has to be taken on trust.",
    source: PRACTICE,
    messages: { unseen: "{name}: \"{cue}\" shows from the {angles}, and no shot is planned from there. Add one, or move a camera." },
  },
  check({ block, newId }, _options, report) {
    if (block.kind !== "exercise" || wordsOf(block, "shot").length === 0) return;
    const lines = new Map<string, Line>(wordsOf(block, "cue").map((line) => [`cue:${line.id}`, line]));
    for (const { id, asked, angles, coveredBy } of cueWantsOf(block)) {
      const line = lines.get(id);
      if (!line || coveredBy !== null) continue;
      // Nice to have: the sets may be taken up by the shots that must be had.
      const text = printShotLine({ ...asked, need: "nice" });
      report({
        block, line, message: "unseen", data: { name: blockName(block), cue: line.text, angles: listed(angles).replace(" and ", " or ") },
        remedies: [{ label: `Adds a shot: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "shot", text) }] }],
      });
    }
  },
});
