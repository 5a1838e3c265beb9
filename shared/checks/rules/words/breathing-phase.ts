import { blockName } from "../../../episode";
import { rangeOf } from "../../ranges";
import { exerciseOf, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

/** "Breathe in as you press": the breath on the wrong half of a lift. Breathing out while lowering is left to taste. */
const IN_ON_EFFORT = /\b(?:breathe in|inhale|take a breath) (?:as|while|when) you (?:press|push|lift|stand|drive|pull|row|curl|come up|go up|rise)\b/i;
/** The same where the effort is on the way up; a pulldown's is not. */
const IN_ON_THE_WAY_UP = /\b(?:breathe in|inhale|take a breath)(?: on the way up| going up| as the (?:bar|bell|bells|weight|weights) (?:goes|go|comes|come|rises|rise)(?: up)?)\b/i;
const LIFTS_UP = ["squat", "hinge", "bridge-thrust", "lunge-step", "horizontal-press", "overhead-press"];
const DENIED = /\b(?:don't|do not|never|not|avoid|rather than|instead of)\b[^.;]*$/i;

export const breathingPhase = defineBlockRule({
  meta: {
    id: "breathing-phase", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "The breath goes out on the effort.",
    why: "Breathing out through the hard part keeps the trunk firm and the pressure moderate. The other way round people end up holding it.",
    source: { title: "Common practice; taught so in NSCA and ACSM texts (from memory)" },
    yieldsTo: ["no-unsafe-cue", "no-contradictory-cues"],
    messages: { inhale: "{name}: \"{words}\" puts the inhale on the effort. Say: breathe out on the way up." },
  },
  check({ block }, _options, report) {
    if (block.kind !== "exercise") return;
    for (const line of [...wordsOf(block, "cue"), ...wordsOf(block, "say")]) {
      const match = IN_ON_EFFORT.exec(line.text) ?? (LIFTS_UP.includes(exerciseOf(block)?.family ?? "") ? IN_ON_THE_WAY_UP.exec(line.text) : null);
      if (!match || DENIED.test(line.text.slice(0, match.index))) continue;
      report({ block, line, range: rangeOf(match), message: "inhale", data: { name: blockName(block), words: match[0] } });
    }
  },
});
