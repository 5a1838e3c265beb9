import { blockName } from "../../../episode";
import { remedyIn, shootPlan, wantName } from "../../../shoot-plan";
import { listed, PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

export const noLostShot = defineBlockRule({
  meta: {
    id: "no-lost-shot", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "Every must-have shot has a set it can be filmed on.",
    why: "There is one take: what no camera looks at while the set is done is not filmed.",
    source: PRACTICE,
    yieldsTo: ["unreadable-set-line", "shot-set", "max-must-marks"],
    messages: { lost: "{name}: {shots} would not be filmed: {why}." },
  },
  check({ block, facts, newId }, _options, report) {
    const plan = shootPlan({ ...facts, title: "", blocks: [block] });
    const [planned] = plan.blocks;
    if (!planned) return;
    const lost = planned.lost.flatMap((loss) => planned.wants.filter(({ id, need }) => id === loss.want && need === "must").map((want) => ({ want, why: loss.why })));
    if (lost.length === 0) return;
    const remedy = remedyIn(plan, planned, newId);
    report({
      block, words: lost.map(({ want }) => wantName(want)).join(", "), message: "lost",
      data: { name: blockName(block), shots: listed(lost.map(({ want }) => wantName(want))), why: [...new Set(lost.map(({ why }) => why))].slice(0, 2).map((why) => `${why.charAt(0).toLowerCase()}${why.slice(1).replace(/\.$/, "")}`).join("; ") },
      remedies: remedy && remedy.edits.length > 0 ? [{ label: remedy.label, edits: [...remedy.edits] }] : [],
    });
  },
});
