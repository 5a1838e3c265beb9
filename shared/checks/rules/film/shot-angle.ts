import { blockName } from "../../../episode";
import { shotsOf } from "../../../filming";
import { PRACTICE, shortened } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const shotAngle = defineBlockRule({
  meta: {
    id: "shot-angle", version: 1, subject: "film", level: "consider", moment: "before filming",
    summary: "A shot of an exercise says from where it is filmed.",
    why: "On the floor there is no time to think about it, and the camera stays where it stood.",
    source: PRACTICE,
    messages: { none: "{name}: the shot \"{shot}\" names no angle. Write front, side, three-quarter or rear first." },
  },
  check({ block }, _options, report) {
    if (block.kind !== "exercise") return;
    for (const { line, shot } of shotsOf(block)) {
      const text = line.text.trim();
      if (text === "" || shot.angle !== null || /\bany angle\b/i.test(text)) continue;
      report({ block, line, message: "none", data: { name: blockName(block), shot: shortened(text) } });
    }
  },
});
