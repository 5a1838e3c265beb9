import { blockName } from "../../../episode";
import { sentencesOf } from "../../../speech";
import { PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { numbersSaid } from "../../numbers-said";

const SAID = { kg: /^[ -]?(?:kgs?|kilos?|kilograms?|kilogrammes?)\b/i, lb: /^[ -]?(?:lbs?|pounds?)\b/i } as const;
const NAMES = { kg: "kilograms", lb: "pounds" } as const;

export const oneUnitSaid = defineBlockRule({
  meta: {
    id: "one-unit-said", version: 1, subject: "words", level: "fix", moment: "before speaking",
    summary: "Weights are said in the session's unit, or in both.",
    why: "A number heard in one unit and read in another is loaded wrong, and more than twice as heavy or light.",
    source: PRACTICE,
    messages: { other: "{name}: \"{words}\" is said in {other}, and the session counts in {unit}. Say it in {unit}, or in both." },
  },
  check({ block, facts }, _options, report) {
    const { units } = facts.session;
    const other = units === "kg" ? "lb" : "kg";
    for (const line of [...wordsOf(block, "cue"), ...wordsOf(block, "say"), ...wordsOf(block, "caution")]) {
      // A sentence that gives both helps both kinds of viewer.
      const both = sentencesOf(line.text).filter((sentence) => numbersSaid(sentence).some(({ end }) => SAID[units].test(sentence.slice(end))));
      for (const { start, end } of numbersSaid(line.text)) {
        const unit = SAID[other].exec(line.text.slice(end))?.[0];
        if (unit === undefined || both.some((sentence) => { const at = line.text.indexOf(sentence); return start >= at && start < at + sentence.length; })) continue;
        const range = { start, end: end + unit.length };
        report({ block, line, range, message: "other", data: { name: blockName(block), words: line.text.slice(range.start, range.end), other: NAMES[other], unit: NAMES[units] } });
      }
    }
  },
});
