import { blockName } from "../../../episode";
import { PRACTICE, shortened } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { judged } from "../../judged-lines";
import { nearestLines, type CueLabelName } from "../../language";

/** What the line would ask of people if it is what it resembles. */
const MATTERS: Readonly<Record<CueLabelName, string>> = {
  "spine-under-load": "let the low back give way under load",
  "joint-lockout": "send a joint hard into its end",
  "breath-hold": "hold the breath through many repetitions",
  "pain-push": "send people on through a warning sign",
  "ballistic-or-bounce": "bounce or heave the load",
  "neck-position": "force or load the neck",
  "knee-tracking": "let the knee fall inward",
  overextension: "bend the low back backwards",
  "load-jump": "go up by far more than a small step",
  "no-spotter": "take the catch away from a heavy lift",
  "failure-unsafe": "go on after control is gone",
  "claim-spot-reduction": "promise fat loss in one place",
  "claim-guarantee": "promise a result",
  "claim-medical": "promise a cure or replace a professional",
  "diet-extreme": "tell people to go without food or drink, or to earn it",
  shame: "put people down",
  "disclosure-missing": "recommend a product without saying what is behind it",
  "population-risk": "be a particular risk for the people addressed",
};

export const noDoubtfulCue = defineBlockRule({
  meta: {
    id: "no-doubtful-cue", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "No picture or turn of phrase reads like one that asks for something unsafe or unfair.",
    why: "Pictures travel further than plain words, and a viewer may take one at its word. This is a likeness, learned from judged lines; it can be wrong.",
    source: PRACTICE,
    yieldsTo: ["no-unsafe-cue"],
    messages: { resembles: "{name}: \"{words}\" reads like lines that {matter}. Say it plainly, or set this aside if you mean something else." },
  },
  check({ block, facts }, _options, report) {
    for (const { line, label, moment } of judged(block, facts, "likeness")) {
      const said = line.text.slice(label.start, label.end);
      const alike = nearestLines(said, label.label).map((each) => `"${shortened(each)}"`).join(" and ");
      report({
        block, line, range: { start: label.start, end: label.end }, message: "resembles", moment,
        data: { name: blockName(block), words: shortened(said), matter: MATTERS[label.label] },
        why: `It resembles lines that were judged so, nearest ${alike}. What makes it a finding: ${label.ruling} A likeness is learned from judged lines and can be wrong.`,
      });
    }
  },
});
