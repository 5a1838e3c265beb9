import { blockName, type Episode } from "../../../episode";
import { effortSaid, listed, repsLeft, workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { writes } from "../../set-remedy";

const NAMES: Readonly<Record<Episode["audience"]["groups"][number], string>> = {
  teen: "teenagers", older: "older adults", pregnant: "pregnant viewers", postnatal: "viewers after a birth", returning: "people coming back after a break",
};

export const maxAudienceEffort = defineBlockRule({
  meta: {
    id: "max-audience-effort", version: 1, subject: "dose", level: "fix", moment: "before filming",
    summary: "Viewers with a particular need keep repetitions in reserve.",
    why: "Who is growing, pregnant, older or out of practice pays more for one repetition too many, and gains nothing from it.",
    source: { title: "ACOG Committee Opinion 804, 2020; NSCA statements on older (2019) and young lifters (2009); all from memory", at: "moderate effort, technique first; two in reserve is common practice" },
    yieldsTo: ["no-failure-alone"],
    defaults: { reserve: 2 },
    messages: { hard: "{name}: {effort} for {who}, at least {min} repetitions in reserve expected. Ask for less." },
  },
  check({ block, facts }, { reserve }, report) {
    const { groups } = facts.audience;
    if (groups.length === 0) return;
    for (const { set, scheme } of workingSets(block)) {
      const left = repsLeft(scheme);
      if (left === null || left >= reserve) continue;
      const { rpe: _rpe, ...rest } = scheme;
      report({
        block, line: set, level: left >= 1 ? "consider" : "fix", message: "hard",
        data: { name: blockName(block), effort: effortSaid(scheme), who: listed(groups.map((group) => NAMES[group])), min: reserve },
        // As many as possible has no number to keep; the coach sets one.
        remedies: scheme.amrap ? [] : writes(set, { ...rest, rir: reserve }),
      });
    }
  },
});
