import { blockName, type Block, type Edit, type NewId } from "../../../episode";
import { rampOf, setCount } from "../../../training";
import { exerciseBlocks, exerciseOf, setLinesOf, workingSets } from "../../blocks";
import { defineRule } from "../../define-rule";
import type { Remedy } from "../../types";

const adds = (block: Block, lines: readonly string[], newId: NewId): Remedy => ({
  label: `Adds ${lines.length === 1 ? "a ramp-up set" : `${lines.length} ramp-up sets`}: ${lines.join("; ")}`,
  edits: lines.map((text, at): Edit => ({ type: "insert-set", block: block.id, at, set: { id: newId(), role: "ramp-up", text } })),
});

export const rampUpSets = defineRule({
  meta: {
    id: "ramp-up-sets", version: 2, subject: "structure", level: "fix", moment: "before filming",
    summary: "The first heavy lift for a muscle has ramp-up sets.",
    why: "A set at about half the load and one nearer to it make the first working set better and steadier. Viewers rarely do them unless they see them.",
    source: { title: "Warm-up sets before squat and bench press, PMC7558980, 2020" },
    defaults: { lightReps: 15 },
    messages: { none: "{name}: {sets} working sets and no ramp-up sets. Add a few lighter sets first." },
  },
  check({ episode, newId }, { lightReps }, report) {
    const ready = new Set<string>();
    for (const block of exerciseBlocks(episode)) {
      const exercise = exerciseOf(block);
      const working = workingSets(block);
      if (!exercise || working.length === 0) continue;
      const fresh = exercise.direct.some((muscle) => !ready.has(muscle));
      exercise.direct.forEach((muscle) => ready.add(muscle));
      if (!exercise.rampUp || !fresh || setLinesOf(block).some(({ set }) => set.role === "ramp-up")) continue;
      if (working.every(({ scheme }) => (scheme.repsMin ?? 0) >= lightReps)) continue;
      const ramp = rampOf({ ...block, exercise: exercise.id });
      const lines = ramp?.lines ?? [];
      // For who has little time: the set nearest to half the load, alone.
      const fromHalf = ramp?.sets.map(({ percent }) => Math.abs(percent - 50)) ?? [];
      const half = lines[fromHalf.indexOf(Math.min(...fromHalf))];
      report({
        block, words: "no ramp-up sets", message: "none",
        data: { name: blockName(block), sets: working.reduce((sum, { scheme }) => sum + setCount(scheme), 0) },
        remedies: [...(lines.length > 1 ? [adds(block, lines, newId)] : []), ...(half === undefined ? [] : [adds(block, [half], newId)])],
      });
    }
  },
});
