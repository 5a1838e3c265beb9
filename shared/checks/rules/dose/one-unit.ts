import { blockName } from "../../../episode";
import { PRACTICE, setLinesOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const oneUnit = defineBlockRule({
  meta: {
    id: "one-unit", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "Loads are written in the session's unit.",
    why: "A 45 pound bar is no 20 kilogram bar. Two units in one plan get loaded wrong.",
    source: PRACTICE,
    messages: { other: "{name}: a load in {other}, and the session counts in {unit}. Write it in {unit}." },
  },
  check({ block, facts }, _options, report) {
    const { units } = facts.session;
    for (const { set, parse } of setLinesOf(block)) {
      const unit = parse.ok ? parse.scheme.load?.unit.replace("bodyweight+", "") : undefined;
      if ((unit === "kg" || unit === "lb") && unit !== units) report({ block, line: set, message: "other", data: { name: blockName(block), other: unit, unit: units } });
    }
  },
});
