import { blockName } from "../../../episode";
import { exerciseBlocks, PRACTICE, workingSets } from "../../blocks";
import { parseSetLine, setCount } from "../../../training";
import { defineRule } from "../../define-rule";
import { writes } from "../../set-remedy";

export const maxSetJump = defineRule({
  meta: {
    id: "max-set-jump", version: 1, subject: "dose", level: "consider", moment: "before filming",
    summary: "An exercise gains at most one set from one episode to the next.",
    why: "More work at once is what soreness and worse come from, even at the same weight.",
    source: PRACTICE,
    defaults: { sets: 1 },
    messages: { jump: "{name}: {now} working sets today, {before} last time, at most {max} more expected. Add one at a time." },
  },
  check({ episode }, { sets }, report) {
    for (const block of exerciseBlocks(episode)) {
      const carried = episode.carryOver.find(({ exercise }) => exercise === block.exercise);
      const last = carried ? parseSetLine(carried.sets) : null;
      const today = workingSets(block);
      const [first] = today;
      if (!last?.ok || !first) continue;
      const before = setCount(last.scheme);
      const now = today.reduce((sum, { scheme }) => sum + setCount(scheme), 0);
      if (now > before + sets) report({ block, line: first.set, message: "jump", data: { name: blockName(block), now, before, max: sets }, remedies: today.length === 1 && first.scheme.sets !== undefined ? writes(first.set, { ...first.scheme, sets: before + sets }) : [] });
    }
  },
});
