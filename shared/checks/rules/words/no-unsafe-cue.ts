import { blockName, type Block, type Line } from "../../../episode";
import { sentencesOf } from "../../../speech";
import { exerciseOf, PRACTICE, shortened } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import type { CueLabel, CueLabelName } from "../../language";
import { judged } from "../../judged-lines";
import type { CheckLevel, Remedy, RuleSource } from "../../types";

/** What each label means for the coach: how grave, on whose word, and what the catalogue's better cue would be about. */
const GRADES: Readonly<Record<CueLabelName, { level: CheckLevel; source: RuleSource; about?: RegExp }>> = {
  "spine-under-load": { level: "stop", source: PRACTICE, about: /\b(?:back|brace|trunk|spine)\b/i },
  "joint-lockout": { level: "stop", source: PRACTICE, about: /\b(?:soft|short of|control|bend)\b/i },
  "breath-hold": { level: "stop", source: { title: "ACSM and NSCA texts on breathing, from memory" }, about: /\bbreath(?:e|s)?\b/i },
  "pain-push": { level: "stop", source: { title: "Hospital advice on warning signs during exercise, common to three published pages" } },
  "ballistic-or-bounce": { level: "stop", source: PRACTICE, about: /\b(?:pause|slow|control|touch|lower|seconds)\b/i },
  "neck-position": { level: "stop", source: PRACTICE, about: /\b(?:chin|neck|head|eyes|look|crown)\b/i },
  "knee-tracking": { level: "stop", source: PRACTICE, about: /\bknees?\b/i },
  overextension: { level: "stop", source: PRACTICE, about: /\b(?:ribs?|glutes?|tall|straight line)\b/i },
  "load-jump": { level: "stop", source: { title: "ACSM, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 41(3), 2009", at: "summary: raise by 2 to 10 %" } },
  "no-spotter": { level: "stop", source: { title: "NSCA advice on spotted lifts, from memory" } },
  "failure-unsafe": { level: "stop", source: PRACTICE },
  "claim-spot-reduction": { level: "fix", source: { title: "CAP (UK) advice on weight loss from a chosen body part", at: "Code section 13" } },
  "claim-guarantee": { level: "fix", source: { title: "CAP (UK) advice on weight control claims", at: "Code section 13" } },
  "claim-medical": { level: "fix", source: { title: "FTC Gut Check for media, 2014, as a list of red flags" } },
  "diet-extreme": { level: "stop", source: { title: "ACSM, Exercise and Fluid Replacement, Med Sci Sports Exerc 39(2), 2007, for fluids; the rest common practice" } },
  shame: { level: "fix", source: PRACTICE },
  "disclosure-missing": { level: "stop", source: { title: "FTC Endorsement Guides, 16 CFR Part 255, 2023", at: "255.5" } },
  "population-risk": { level: "stop", source: { title: "ACOG Committee Opinion 804, 2020, and NSCA statement on older adults, 2019; details from memory" } },
};

/** Takes the sentence at fault out of the line, or the line out of the block when nothing else is said in it. */
function takesOut(line: Line, start: number): Remedy {
  let from = 0;
  for (const sentence of sentencesOf(line.text)) {
    const at = line.text.indexOf(sentence, from);
    if (at === -1) break;
    from = at + sentence.length;
    if (start >= from) continue;
    const rest = `${line.text.slice(0, at).trimEnd()} ${line.text.slice(from).trimStart()}`.replace(/^[\s/]+|[\s/]+$/g, "");
    return rest === "" ? { label: `Removes "${shortened(line.text)}"`, edits: [{ type: "remove-line", line: line.id }] } : { label: `Takes out "${shortened(sentence)}"`, edits: [{ type: "set-line", line: line.id, fields: { text: rest } }] };
  }
  return { label: `Removes "${shortened(line.text)}"`, edits: [{ type: "remove-line", line: line.id }] };
}

function remediesFor(line: Line, { label, start }: CueLabel, block: Block): Remedy[] {
  const about = GRADES[label].about;
  const taken = new Set(block.lines.map(({ text }) => text));
  const better = line.kind === "cue" && about ? exerciseOf(block)?.cues.find(({ text }) => about.test(text) && !taken.has(text)) : undefined;
  return [
    ...(better ? [{ label: `Replaces it by: ${better.text}`, edits: [{ type: "set-line" as const, line: line.id, fields: { text: better.text } }] }] : []),
    takesOut(line, start),
  ];
}

export const noUnsafeCue = defineBlockRule({
  meta: {
    id: "no-unsafe-cue", version: 1, subject: "words", level: "stop", moment: "before speaking",
    summary: "No line asks people to do or believe what could hurt them, misleads them or puts them down.",
    why: "Strangers copy the words with weights in their hands, and nobody is there to see it go wrong.",
    source: PRACTICE,
    messages: {
      "spine-under-load": "{name}: \"{words}\" lets the low back give way under load. Ask for the back shape set at the start, or less weight.",
      "joint-lockout": "{name}: \"{words}\" sends a joint hard into its end. Ask for a straight finish without force.",
      "breath-hold": "{name}: \"{words}\" holds the breath for longer than one repetition. Say when to breathe out.",
      "pain-push": "{name}: \"{words}\" sends people on through a warning sign. Say when to stop, shorten or swap.",
      "ballistic-or-bounce": "{name}: \"{words}\" bounces or heaves. Ask for control at the end of the range.",
      "neck-position": "{name}: \"{words}\" forces or loads the neck. Ask for a long neck in line with the back.",
      "knee-tracking": "{name}: \"{words}\" lets the knee fall inward. Ask for knees in line with the toes.",
      overextension: "{name}: \"{words}\" bends the low back backwards. Ask for ribs over hips.",
      "load-jump": "{name}: \"{words}\" is a big step at once. Name a small one, or a way back.",
      "no-spotter": "{name}: \"{words}\" takes the catch away from a heavy lift. Name the spotter, arms or pins.",
      "failure-unsafe": "{name}: \"{words}\" goes on after control is gone. Say that the set ends when the form does.",
      "claim-spot-reduction": "{name}: \"{words}\" promises fat loss in one place, which training does not do. Say what gets stronger.",
      "claim-guarantee": "{name}: \"{words}\" promises a result. Say what it can help with; results vary.",
      "claim-medical": "{name}: \"{words}\" promises a cure or replaces a professional. Say what it trains and who to ask.",
      "diet-extreme": "{name}: \"{words}\" tells people to go without food or drink, or to earn it. Leave food out, or keep it ordinary.",
      shame: "{name}: \"{words}\" puts people down. Say what to do instead.",
      "disclosure-missing": "{name}: \"{words}\" recommends a product and hints at a favour. Say plainly that it is an ad, or leave it out.",
      "population-risk": "{name}: \"{words}\" is a particular risk for the people it addresses. Offer the safer version, or send them to who looks after them.",
    },
  },
  check({ block, facts }, _options, report) {
    for (const { line, label: found, moment } of judged(block, facts, "grammar")) {
      const { label, start, end } = found;
      report({
        block, line, range: { start, end }, message: label, level: GRADES[label].level, source: GRADES[label].source, moment,
        data: { name: blockName(block), words: line.text.slice(start, end) }, remedies: remediesFor(line, found, block),
      });
    }
  },
});
