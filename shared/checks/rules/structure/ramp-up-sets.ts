import { blockName, type Block } from "../../../episode";
import { exerciseBlocks, exerciseOf, setLinesOf, workingSets } from "../../blocks";
import { defineRule } from "../../define-rule";

/** Half the working load, as a set line; null when the load is not a plain weight. */
function rampUpLine(block: Block): string | null {
  const first = workingSets(block)[0]?.scheme;
  const load = first?.load;
  if (!first || !load || load.value === null || load.value <= 0 || (load.unit !== "kg" && load.unit !== "lb")) return null;
  const step = load.unit === "kg" ? 2.5 : 5;
  const half = Math.floor(load.value / 2 / step) * step;
  if (half <= 0) return null;
  return `1 x 8${first.eachSide ? " each side" : ""} @ ${half} ${load.unit}${load.perHand ? " each hand" : ""}, rest 60 s`;
}

export const rampUpSets = defineRule({
  meta: {
    id: "ramp-up-sets", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "The first heavy lift for a muscle has ramp-up sets.",
    why: "A set at about half the load and one nearer to it make the first working set better and steadier. Viewers rarely do them unless they see them.",
    source: { title: "Warm-up sets before squat and bench press, PMC7558980, 2020" },
    messages: { none: "{name}: {sets} working sets and no ramp-up sets. Add one or two lighter sets first." },
  },
  check({ episode, newId }, _options, report) {
    const ready = new Set<string>();
    for (const block of exerciseBlocks(episode)) {
      const exercise = exerciseOf(block);
      const working = workingSets(block);
      if (!exercise || working.length === 0) continue;
      const fresh = exercise.direct.some((muscle) => !ready.has(muscle));
      exercise.direct.forEach((muscle) => ready.add(muscle));
      if (!exercise.rampUp || !fresh || setLinesOf(block).some(({ set }) => set.role === "ramp-up")) continue;
      const text = rampUpLine(block);
      report({
        block, words: "no ramp-up sets", message: "none",
        data: { name: blockName(block), sets: working.reduce((sum, { scheme }) => sum + (scheme.sets ?? 1), 0) },
        remedies: text === null ? [] : [{ label: `Adds a ramp-up set: ${text}`, edits: [{ type: "insert-set", block: block.id, at: 0, set: { id: newId(), role: "ramp-up", text } }] }],
      });
    }
  },
});
