import { blockName, newLine } from "../../../episode";
import { effortSaid, exerciseOf, isNearFailure, workingSets, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

/** A caution that names what catches the weight. */
const CATCH = /\b(?:spotter|spot you|spotting|safet(?:y|ies)|pins?\b|catch|stops|training partner|someone (?:to|who)|somebody (?:to|who)|helper)/i;

export const noFailureAlone = defineBlockRule({
  meta: {
    id: "no-failure-alone", version: 1, subject: "dose", level: "stop", moment: "before filming",
    summary: "A lift that can pin the lifter is not taken to the limit alone without a caution that names the catch.",
    why: "Alone under a bar or bells, a failed repetition has no one to lift it off. Safety arms or pins set at the right height do that work.",
    source: { title: "Common practice, no source; the list of spotted lifts after NSCA, from memory" },
    messages: { alone: "{name}: {effort}, alone, and no caution names a spotter, safety arms or pins. Add one, or keep two repetitions in reserve." },
  },
  check({ block, facts, newId }, _options, report) {
    const exercise = exerciseOf(block);
    if (!exercise?.needsSpotter || !facts.session.alone || wordsOf(block, "caution").some(({ text }) => CATCH.test(text))) return;
    for (const { set, scheme } of workingSets(block)) {
      if (!isNearFailure(scheme)) continue;
      const own = exercise.cautions.find((text) => CATCH.test(text));
      const text = own ?? "Have somebody spot you, or set the safety arms and try them with no weight first.";
      report({
        block, line: set, message: "alone", data: { name: blockName(block), effort: effortSaid(scheme) },
        remedies: [{ label: `Adds a caution: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "caution", text) }] }],
      });
    }
  },
});
