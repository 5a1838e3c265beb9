import { blockName } from "../../../episode";
import { PRACTICE } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { rangeOf } from "../../ranges";
import type { RuleSource } from "../../types";

/** Things often said that the literature does not carry, or where respectable sources differ. */
const CLAIMS: readonly { readonly says: RegExp; readonly truth: string; readonly source: RuleSource }[] = [
  { says: /\b(?:cool[- ]?down|stretch(?:ing|es)?)\b[^.]{0,30}\b(?:prevents?|stops?|avoids?|gets? rid of)\b[^.]{0,12}\b(?:soreness|injur\w+)/i, truth: "a cool-down does little for soreness or injury; it helps the breath settle", source: { title: "Van Hooren & Peake, Sports Medicine 48:1575-1595, 2018" } },
  { says: /\b(?:flush(?:es)?|clears?|gets? rid of)\b[^.]{0,20}\blactic acid\b/i, truth: "a cool-down does not need to clear anything; it helps the breath settle", source: { title: "Van Hooren & Peake, Sports Medicine 48:1575-1595, 2018" } },
  { says: /\b(?:never|don'?t)\b[^.]{0,24}\bknees?\b[^.]{0,16}\b(?:past|pass|passing|over|beyond|in front of)\b[^.]{0,10}\btoes\b/i, truth: "some forward travel of the knee is normal; coaches differ", source: { title: "Fry, Smith & Schilling, J Strength Cond Res 17(4):629-633, 2003" } },
  { says: /\b(?:deep squats?|squatting deep|below parallel)\b[^.]{0,24}\b(?:destroys?|ruins?|wrecks?|is bad for|are bad for)\b[^.]{0,12}\bknees?\b/i, truth: "deep squats are not known to harm healthy knees", source: { title: "Hartmann et al., 2013, from memory" } },
  { says: /\b(?:must|have to|need to)\b[^.]{0,12}\b(?:fail|train to failure|go to failure)\b/i, truth: "training to failure was not found to change results consistently", source: { title: "ACSM position stand on resistance training, 2026, as reported" } },
  { says: /\b(?:no soreness|not sore|aren'?t sore|if you'?re not sore)\b[^.]{0,30}\b(?:no progress|didn'?t work|not enough|wasted|no gains?)\b/i, truth: "soreness is no measure of progress", source: PRACTICE },
  { says: /\bburns? (?:about |up to |over |around )?\d+ (?:k?cal|calories)\b/i, truth: "one number fits no two bodies; a range and what it assumes would", source: PRACTICE },
  { says: /\b(?:lifting|weights?|squats?|training)\b[^.]{0,20}\bstunts?\b[^.]{0,16}\bgrowth\b/i, truth: "supervised lifting was not found to stunt growth", source: { title: "Stricker, Faigenbaum & McCambridge, Pediatrics 145(6):e20201011, 2020, from memory" } },
];

export const noDisputedClaim = defineBlockRule({
  meta: {
    id: "no-disputed-claim", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "Statements that the literature does not carry are said as an opinion, or not at all.",
    why: "Viewers repeat what a coach says. Where good sources differ, it is fair to say so.",
    source: PRACTICE,
    yieldsTo: ["no-unsafe-cue", "no-contradictory-cues"],
    messages: { disputed: "{name}: \"{words}\" is disputed: {truth}. Say it as your own view, or leave it out." },
  },
  check({ block }, _options, report) {
    for (const line of block.lines) {
      if (line.kind !== "say" && line.kind !== "cue" && line.kind !== "caution") continue;
      for (const { says, truth, source } of CLAIMS) {
        const found = says.exec(line.text);
        if (found) report({ block, line, range: rangeOf(found), message: "disputed", source, data: { name: blockName(block), words: found[0], truth } });
      }
    }
  },
});
