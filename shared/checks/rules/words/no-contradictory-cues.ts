import { blockName, type Block, type Line } from "../../../episode";
import { exerciseOf, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { OPPOSITES, type Opposites } from "../../opposites";
import { rangeOf } from "../../ranges";
import type { Remedy } from "../../types";

const FORBIDS = /\b(?:don'?t|never|not|avoid|no|without|instead of|rather than)\b[^.,;]*$/i;
const TURNS = /\b(?:then|before|after|until)\b/i;
type Way = Opposites["one"];

/** Where a cue says so, unless it forbids it or names it as one of two steps. */
function saying(text: string, { says }: Way): RegExpExecArray | null {
  const found = says.exec(text);
  return found && !FORBIDS.test(text.slice(0, found.index)) && !TURNS.test(text) ? found : null;
}

/** The fault an avoid line names: what stands before its way out. */
const faultOf = (text: string): string => text.split(/[:;]|\binstead\b/i)[0] ?? text;
const removes = (line: Line): Remedy => ({ label: `Removes "${line.text}"`, edits: [{ type: "remove-line", line: line.id }] });
/** Lines that send the part this way and not, in the same breath, the other. */
const linesSaying = (lines: readonly Line[], way: Way, other: Way): Line[] => lines.filter(({ text }) => saying(text, way) && !saying(text, other));

/** What the catalogue holds against sending the part this way: its cue for the other way, or its name for the fault. */
function usual(block: Block, way: Way, other: Way): string | null {
  const exercise = exerciseOf(block);
  if (!exercise || exercise.cues.some(({ text }) => way.says.test(text))) return null;
  const fault = exercise.avoid.find(({ text }) => way.says.test(text));
  if (fault) return `"${fault.text}" is usually named as a fault`;
  const cue = exercise.cues.find(({ text }) => saying(text, other));
  return cue ? `the usual cue is "${cue.text}"` : null;
}

export const noContradictoryCues = defineBlockRule({
  meta: {
    id: "no-contradictory-cues", version: 2, subject: "words", level: "fix", moment: "before filming",
    summary: "No cue of an exercise sends a body part the opposite way of another cue, of the fault to avoid, or of what is usual.",
    why: "A viewer who hears both does neither, or the wrong one.",
    source: PRACTICE,
    yieldsTo: ["no-unsafe-cue"],
    messages: {
      opposed: "{name}: one cue wants the {part} {one}, another {other}. Keep the one you mean.",
      spoken: "{name}: a cue wants the {part} {one}, the words to speak {other}. Keep the one you mean.",
      forbidden: "{name}: a cue wants the {part} {one}, and the fault to avoid says the same: \"{fault}\". Keep the one you mean.",
      unusual: "{name}: a cue wants the {part} {one}; {usual}. Keep it if you mean it.",
    },
  },
  check({ block }, _options, report) {
    const name = blockName(block);
    const [cues, says, faults] = [wordsOf(block, "cue"), wordsOf(block, "say"), wordsOf(block, "avoid")];
    for (const { part, one, other } of OPPOSITES) {
      const [first] = linesSaying(cues, one, other);
      const [second] = linesSaying(cues, other, one);
      if (first && second) {
        const [earlier, later, was, is] = cues.indexOf(first) < cues.indexOf(second) ? [first, second, one, other] : [second, first, other, one];
        const at = saying(later.text, is);
        report({ block, line: later, ...(at ? { range: rangeOf(at) } : {}), message: "opposed", data: { name, part, one: was.name, other: is.name }, remedies: [removes(later), removes(earlier)] });
        continue;
      }
      const [line, way, against] = first ? [first, one, other] : [second, other, one];
      const at = line ? saying(line.text, way) : null;
      if (!line || !at) continue;
      const spoken = linesSaying(says, against, way)[0];
      const heard = spoken ? saying(spoken.text, against) : null;
      const fault = faults.find(({ text }) => way.says.test(faultOf(text)));
      const known = usual(block, way, against);
      if (spoken && heard) report({ block, line: spoken, range: rangeOf(heard), message: "spoken", moment: "before speaking", data: { name, part, one: way.name, other: against.name } });
      if (fault) report({ block, line, range: rangeOf(at), message: "forbidden", data: { name, part, one: way.name, fault: faultOf(fault.text).trim() }, remedies: [removes(line), removes(fault)] });
      else if (known && !spoken) report({ block, line, range: rangeOf(at), message: "unusual", level: "consider", data: { name, part, one: way.name, usual: known }, remedies: [removes(line)] });
    }
  },
});
