import { blockName } from "../../../episode";
import { exerciseBlocks, PRACTICE, wordsOf, workingSets } from "../../blocks";
import { parseSetLine, printSetLine } from "../../../training";
import { defineRule } from "../../define-rule";

/** Said when a coach speaks of last time. */
const LAST_TIME = /\b(?:last (?:time|week|sunday|monday|tuesday|wednesday|thursday|friday|saturday|episode)|same (?:weight|load|sets|numbers)|more than|heavier|lighter|one more|again|still|up from|compared)\b/i;

export const changeFromLast = defineRule({
  meta: {
    id: "change-from-last", version: 1, subject: "structure", level: "consider", moment: "before speaking",
    summary: "The episode says what changed since the last one of its series, or that nothing did.",
    why: "Viewers who follow the series ask one thing first: what is different today.",
    source: PRACTICE,
    messages: { unsaid: "{name} is as last time ({sets}), and no words say so. Say what changed, or that nothing did." },
  },
  check({ episode }, _options, report) {
    if (episode.carryOver.length === 0) return;
    for (const block of exerciseBlocks(episode)) {
      const carried = episode.carryOver.find(({ exercise }) => exercise === block.exercise);
      const before = carried ? parseSetLine(carried.sets) : null;
      const [today, ...others] = workingSets(block);
      if (!before?.ok || !today || others.length > 0) continue;
      const sets = printSetLine(today.scheme);
      if (sets !== printSetLine(before.scheme) || wordsOf(block, "say").some(({ text }) => LAST_TIME.test(text))) continue;
      report({ block, line: today.set, message: "unsaid", data: { name: blockName(block), sets } });
    }
  },
});
