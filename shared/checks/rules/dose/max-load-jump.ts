import { blockName } from "../../../episode";
import { increase, parseSetLine, weightChange, type Scheme } from "../../../training";
import { workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { writes } from "../../set-remedy";

const fewest = (scheme: Scheme | null): number | null => scheme?.repsMin ?? (scheme?.reps ? Math.min(...scheme.reps) : null);

export const maxLoadJump = defineBlockRule({
  meta: {
    id: "max-load-jump", version: 2, subject: "dose", level: "fix", moment: "before filming",
    summary: "The load rises by at most a tenth from one episode to the next.",
    why: "Viewers follow the series with their own weights. Small steps keep technique and joints in the same place.",
    source: { title: "ACSM, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 41(3), 2009", at: "summary: 2 to 10 % once 1 to 2 repetitions over the target are done" },
    defaults: { percent: 10 },
    messages: { jump: "{name}: {now} {unit} today, {before} {unit} last time: {percent} % more, at most {max} % expected. Take a smaller step." },
  },
  check({ block, facts }, { percent }, report) {
    const carried = facts.carryOver.find(({ exercise }) => exercise === block.exercise);
    const rise = carried ? weightChange(block, carried) : null;
    if (!carried || !rise || rise.percent <= percent + 1e-9) return;
    const heaviest = workingSets(block).find(({ scheme: { load } }) => load?.value === rise.now.value && load.unit === rise.now.unit);
    if (!heaviest) return;
    const last = parseSetLine(carried.sets);
    const [reps, before] = [fewest(heaviest.scheme), fewest(last.ok ? last.scheme : null)];
    // A step between two light dumbbells is often more than a tenth and still the smallest there is, and more weight for fewer repetitions
    // may be the plan: worth a thought, not a stop.
    const mild = rise.percent <= 2 * percent + 1e-9 || (reps !== null && before !== null && reps < before);
    // Where every step of the gym is too large, last time's weight stays.
    const next = increase(rise.before.value, rise.now.perHand ? 2 : rise.now.unit === "lb" ? 5 : 2.5).loads.at(-1) ?? rise.before.value;
    report({
      block, line: heaviest.set, level: mild ? "consider" : "fix", message: "jump",
      data: { name: blockName(block), now: rise.now.value, before: rise.before.value, unit: rise.now.unit, percent: Math.round(rise.percent), max: percent },
      remedies: writes(heaviest.set, { ...heaviest.scheme, load: { ...rise.now, value: next } }),
    });
  },
});
