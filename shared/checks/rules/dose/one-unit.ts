import { blockName } from "../../../episode";
import { kgToLb, lbToKg } from "../../../training";
import { PRACTICE, setLinesOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { writes } from "../../set-remedy";

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
      const load = parse.ok ? parse.scheme.load : undefined;
      const unit = load?.unit.replace("bodyweight+", "");
      // To the half, which is near enough to look for the next plate.
      const value = load === undefined || load.value === null ? null : Math.round(2 * (units === "kg" ? lbToKg(load.value) : kgToLb(load.value))) / 2;
      if ((unit === "kg" || unit === "lb") && unit !== units) report({ block, line: set, message: "other", data: { name: blockName(block), other: unit, unit: units }, remedies: parse.ok && load && load.unit === unit && value !== null ? writes(set, { ...parse.scheme, load: { ...load, value, unit: units } }) : [] });
    }
  },
});
