import { blockName, type Block } from "../../../episode";
import { exerciseBlocks, exerciseOf, workingSets } from "../../blocks";
import { defineRule } from "../../define-rule";

/** The fewest and the most repetitions a block's working sets ask for, or null when none says. */
function reps(block: Block): { fewest: number; most: number } | null {
  const asked = workingSets(block).flatMap(({ scheme }) => [scheme.repsMin ?? [], scheme.repsMax ?? [], scheme.reps ?? []].flat());
  return asked.length === 0 ? null : { fewest: Math.min(...asked), most: Math.max(...asked) };
}

export const heavyFirst = defineRule({
  meta: {
    id: "heavy-first", version: 2, subject: "structure", level: "consider", moment: "before filming",
    summary: "Heavy sets come before light ones for the same muscles.",
    why: "Few heavy repetitions need fresh muscles. After many light ones the technique goes first.",
    source: { title: "ACSM, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 41(3), 2009", at: "exercise order: higher intensity before lower" },
    yieldsTo: ["exercise-order"],
    defaults: { heavyReps: 6, lightReps: 12 },
    messages: { late: "{heavy} ({few} repetitions) comes after {light} ({many}) and both need the {muscle}. Put {heavy} first." },
  },
  check({ episode }, { heavyReps, lightReps }, report) {
    const blocks = exerciseBlocks(episode);
    blocks.forEach((heavy, i) => {
      const big = exerciseOf(heavy);
      const asked = reps(heavy);
      if (!big?.rampUp || !asked || asked.most > heavyReps) return;
      for (const light of blocks.slice(0, i)) {
        const before = exerciseOf(light);
        const many = reps(light);
        const muscle = before?.direct.find((each) => big.direct.includes(each));
        if (muscle === undefined || !many || many.fewest < lightReps) continue;
        report({
          block: light, words: heavy.id, message: "late", data: { heavy: blockName(heavy), light: blockName(light), few: asked.most, many: many.fewest, muscle },
          remedies: [{ label: `Moves ${blockName(light)} behind ${blockName(heavy)}`, edits: [{ type: "move-block", block: light.id, to: episode.blocks.indexOf(heavy) }] }],
        });
        return;
      }
    });
  },
});
