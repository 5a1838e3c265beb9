import { blockName } from "../../../episode";
import { workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { parseSetLine, type Scheme } from "../../../training";

/** The heaviest load in kilograms or pounds that the actuals or the scheme of last time show. */
function lastLoad(sets: string, actuals: readonly { load: number | null }[]): { value: number; scheme: Scheme | null } | null {
  const read = parseSetLine(sets);
  const scheme = read.ok ? read.scheme : null;
  const lifted = actuals.flatMap(({ load }) => (load === null ? [] : [load]));
  if (lifted.length > 0) return { value: Math.max(...lifted), scheme };
  const value = scheme?.load?.value;
  return value === undefined || value === null ? null : { value, scheme };
}

export const maxLoadJump = defineBlockRule({
  meta: {
    id: "max-load-jump", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "The load rises by at most a tenth from one episode to the next.",
    why: "Viewers follow the series with their own weights. Small steps keep technique and joints in the same place.",
    source: { title: "ACSM, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 41(3), 2009", at: "summary: 2 to 10 % once 1 to 2 repetitions over the target are done" },
    defaults: { percent: 10 },
    messages: { jump: "{name}: {now} {unit} today, {before} {unit} last time: {percent} % more, at most {max} % expected. Take a smaller step or say why." },
  },
  check({ block, facts }, { percent }, report) {
    const carried = facts.carryOver.find(({ exercise }) => exercise === block.exercise);
    const before = carried && lastLoad(carried.sets, carried.actuals);
    if (!before || before.value <= 0) return;
    for (const { set, scheme } of workingSets(block)) {
      const load = scheme.load;
      if (!load || load.value === null || (load.unit !== "kg" && load.unit !== "lb") || (before.scheme?.load && before.scheme.load.unit !== load.unit)) continue;
      if (before.scheme?.load && Boolean(before.scheme.load.perHand) !== Boolean(load.perHand)) continue;
      const rise = (load.value / before.value - 1) * 100;
      if (rise <= percent + 1e-9) continue;
      // A step between two light dumbbells is often more than a tenth and still the smallest there is: worth a thought, not a stop.
      report({ block, line: set, level: rise > 2 * percent + 1e-9 ? "fix" : "consider", message: "jump", data: { name: blockName(block), now: load.value, before: before.value, unit: load.unit, percent: Math.round(rise), max: percent } });
    }
  },
});
