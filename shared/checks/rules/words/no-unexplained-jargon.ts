import { blockName, newLine, type Block, type Episode } from "../../../episode";
import { numberWords } from "../../../speech";
import { PRACTICE, setLinesOf } from "../../blocks";
import { defineRule } from "../../define-rule";
import { rangeOf } from "../../ranges";

/** A word of the trade: how it is written, what shows that it was explained, and a sentence that explains it. */
interface Term {
  readonly name: string;
  readonly written: RegExp;
  readonly explained: RegExp;
  explanation(found: RegExpExecArray): string;
}

const figure = (text: string | undefined, otherwise: number): string => numberWords(Number(text ?? otherwise));

const TERMS: readonly Term[] = [
  { name: "RIR", written: /\bRIR\b(?:\s*(\d))?/i, explained: /\b(?:in reserve|still (?:do|have|could)|could do \w+ more|(?:reps?|repetitions?) left|in the tank)\b/i, explanation: (found) => `Stop when you could still do about ${figure(found[1], 2)} good repetitions; that is what R I R means.` },
  { name: "RPE", written: /\bRPE\b(?:\s*(\d+))?/i, explained: /\b(?:out of ten|scale (?:of|from)|from one to ten|in reserve|(?:reps?|repetitions?) left|how hard)\b/i, explanation: () => "R P E is how hard a set feels, from one to ten; ten means nothing left." },
  { name: "AMRAP", written: /\bAMRAP\b/i, explained: /\bas many\b/i, explanation: () => "A M R A P means as many good repetitions as you can; stop when the form changes." },
  { name: "EMOM", written: /\bEMOM\b/i, explained: /\b(?:every minute|each minute|top of (?:the|every) minute)\b/i, explanation: () => "E M O M means you start a new set at the top of every minute." },
  { name: "1RM", written: /\b1 ?RM\b|\bone-rep max\b/i, explained: /\b(?:heaviest|most you can lift|lift once)\b/i, explanation: () => "One R M is the heaviest weight you could lift once with good form." },
  { name: "tempo figures", written: /\b(?:tempo\s*)?\d[-/]\d[-/][\dX](?:[-/]\d)?\b|\btempo\s*\d\d[\dX]\d\b/i, explained: /\bseconds? (?:down|on the way down|to lower|lowering|up)\b|\blower for\b|\bcount of \w+ down\b/i, explanation: (found) => `The tempo figures are seconds: ${figure(/\d/.exec(found[0])?.[0], 3)} seconds down first, then the pause, the way up, and the pause at the top.` },
  { name: "superset", written: /\bsupersets?\b/i, explained: /\b(?:one after the other|back to back|without (?:a )?rest|straight after)\b/i, explanation: () => "A superset is two exercises one after the other, then the rest." },
  { name: "drop set", written: /\bdrop[- ]?sets?\b/i, explained: /\b(?:take (?:some )?weight off|lighter straight away|less weight at once)\b/i, explanation: () => "In a drop set you take some weight off and go on without a rest." },
  { name: "eccentric", written: /\beccentrics?\b/i, explained: /\b(?:lowering|way down)\b/i, explanation: () => "Eccentric is the lowering part." },
  { name: "concentric", written: /\bconcentrics?\b/i, explained: /\b(?:lifting part|way up)\b/i, explanation: () => "Concentric is the lifting part." },
  { name: "isometric", written: /\bisometrics?\b/i, explained: /\b(?:hold(?:ing)? still|without moving|no movement)\b/i, explanation: () => "Isometric means holding still under the load." },
  { name: "unilateral", written: /\bunilateral(?:ly)?\b/i, explained: /\b(?:one side at a time|one (?:arm|leg) at a time|each side)\b/i, explanation: () => "Unilateral means one side at a time." },
  { name: "posterior chain", written: /\bposterior chain\b/i, explained: /\b(?:back of (?:the|your) (?:body|legs)|backside)\b/i, explanation: () => "The posterior chain is the back of your body, from the calves to the back." },
  { name: "deload", written: /\bdeloads?\b/i, explained: /\b(?:easier|lighter) (?:week|session|weeks)\b/i, explanation: () => "A deload is a lighter week to recover in." },
  { name: "hypertrophy", written: /\bhypertrophy\b/i, explained: /\b(?:muscles? grows?|grow(?:ing)? muscle|muscle growth|bigger muscles?)\b/i, explanation: () => "Hypertrophy means that a muscle grows." },
  { name: "ROM", written: /\bROM\b/, explained: /\b(?:range of motion|how far)\b/i, explanation: () => "R O M is the range of motion: how far you move." },
  { name: "DOMS", written: /\bDOMS\b/, explained: /\bsore(?:ness)?\b/i, explanation: () => "DOMS is the soreness a day or two later." },
];

interface Use { readonly block: Block; readonly line: { readonly id: string; readonly text: string }; readonly found: RegExpExecArray }

function firstUse(episode: Episode, written: RegExp): Use | null {
  for (const block of episode.blocks) {
    const lines = [...setLinesOf(block).map(({ set }) => set), ...block.lines.filter(({ kind }) => kind === "cue" || kind === "say")];
    for (const line of lines) {
      const found = written.exec(line.text);
      if (found) return { block, line, found };
    }
  }
  return null;
}

export const noUnexplainedJargon = defineRule({
  meta: {
    id: "no-unexplained-jargon", version: 1, subject: "words", level: "consider", moment: "before speaking",
    summary: "Short forms of the trade are explained once when beginners watch.",
    why: "A beginner who does not know the short form skips it, and with it the dose.",
    source: PRACTICE,
    messages: { unexplained: "{name}: \"{term}\" is used and nowhere explained, and beginners watch. Say once what it means." },
  },
  check({ episode, newId }, _options, report) {
    if (episode.audience.level === "intermediate" || episode.audience.level === "advanced") return;
    const said = episode.blocks.flatMap(({ lines }) => lines.filter(({ kind }) => kind === "say" || kind === "cue").map(({ text }) => text)).join("\n");
    for (const { name, written, explained, explanation } of TERMS) {
      const use = firstUse(episode, written);
      if (!use || explained.test(said)) continue;
      const text = explanation(use.found);
      report({
        block: use.block, line: use.line, range: rangeOf(use.found), message: "unexplained", data: { name: blockName(use.block), term: name },
        remedies: [{ label: `Says: ${text}`, edits: [{ type: "insert-line", block: use.block.id, at: null, line: newLine(newId, "say", text) }] }],
      });
    }
  },
});
