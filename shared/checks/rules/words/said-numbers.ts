import { blockName, type Line } from "../../../episode";
import { numberWords } from "../../../speech";
import type { Scheme } from "../../../training";
import { PRACTICE, setLinesOf, workingSets, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { numbersSaid, type NumberSaid } from "../../numbers-said";

/** One kind of number: how speech frames it, and what a set line says about it. Null when the set line does not say. */
interface Kind {
  readonly name: string;
  readonly behind: RegExp;
  readonly ahead?: RegExp;
  readonly factor?: number;
  values(scheme: Scheme): readonly number[] | null;
}

const span = (min: number, max: number): number[] => Array.from({ length: Math.max(0, Math.min(500, max - min + 1)) }, (_, i) => min + i);

function repsOf({ reps, repsMin, repsMax }: Scheme): readonly number[] | null {
  if (reps) return reps;
  return repsMin === undefined ? null : span(repsMin, repsMax ?? repsMin);
}

const KINDS: readonly Kind[] = [
  { name: "repetitions in reserve", behind: /^ (?:good |clean )?(?:reps? |repetitions? )?(?:in reserve|in the tank|left in (?:reserve|the tank))\b/, values: ({ rir, rpe }) => (rir !== undefined ? [rir] : rpe !== undefined && rpe >= 6 ? [10 - rpe] : null) },
  { name: "RPE", ahead: /\bRPE (?:of )?$/i, behind: /^/, values: ({ rir, rpe }) => (rpe !== undefined ? [rpe] : rir !== undefined && rir <= 4 ? [10 - rir] : null) },
  { name: "percent of the best single", behind: /^ ?(?:%|percent|per cent)/, values: ({ load }) => (load?.unit === "%1RM" && load.value !== null ? [load.value] : null) },
  { name: "sets", behind: /^ ?[x×] ?\d/, values: ({ sets }) => (sets === undefined ? null : [sets]) },
  { name: "repetitions", ahead: /\d ?[x×] ?$/, behind: /^(?! ?(?:s|sec|seconds?|minutes?|m|metres|meters)\b)/, values: repsOf },
  { name: "minutes", ahead: /\b(?:every|each) minute for $/i, behind: /^ minutes?\b/, values: ({ emomMinutes }) => (emomMinutes === undefined ? null : [emomMinutes]) },
  { name: "seconds", behind: /^ ?(?:s|sec|seconds?) (?:on |per |for )?(?:each side|each set|of work|every time)\b/, values: ({ seconds }) => (seconds === undefined ? null : [seconds]) },
  { name: "sets", behind: /^ (?:working |hard |good )?(?:sets|rounds)\b/, values: ({ sets }) => (sets === undefined ? null : [sets]) },
  { name: "repetitions", behind: /^ (?:good |clean |slow )?(?:reps|repetitions)\b|^ (?:on |per )?each side\b/, values: repsOf },
  { name: "repetitions", ahead: /\b(?:sets|rounds) of $/, behind: /^(?! ?(?:s|sec|seconds?|minutes?|m|metres|meters)\b)/, values: repsOf },
  { name: "load", behind: /^ ?(?:kg|kilos?|kilograms?|lbs?|pounds)\b/, values: ({ load }) => (load && load.value !== null && load.unit !== "%1RM" ? (load.perHand ? [load.value, 2 * load.value] : [load.value]) : null) },
  { name: "rest", behind: /^ ?(?:s|sec|seconds?)(?: of)? (?:rest|break|pause between)\b/, values: ({ restSeconds }) => (restSeconds === undefined ? null : [restSeconds]) },
  { name: "rest", ahead: /\brest(?:s|ing)?(?: for| of)?(?: about)? $/, behind: /^ ?(?:s|sec|seconds?)\b/, values: ({ restSeconds }) => (restSeconds === undefined ? null : [restSeconds]) },
  { name: "rest", ahead: /\brest(?:s|ing)?(?: for| of)?(?: about)? $/, behind: /^ ?(?:min|minutes?)\b/, factor: 60, values: ({ restSeconds }) => (restSeconds === undefined ? null : [restSeconds]) },
  { name: "seconds down", behind: /^ ?(?:s|sec|seconds?) (?:down|on the way down|to lower)\b/, values: ({ tempo }) => (typeof tempo?.[0] === "number" ? [tempo[0]] : null) },
  { name: "metres", behind: /^ ?(?:m|metres|meters)\b/, values: ({ meters }) => (meters === undefined ? null : [meters]) },
];

/** Numbers about other days, a part of the set, or a difference are not the set line's. */
const ASIDE_BEFORE = /\b(?:last|first|final|next|another|extra|plus|only|about|add|other|than|more|from|every|until)\s+(?:the\s+)?$/i;
const ASIDE_AFTER = /^\s?\S+\s+(?:more|less|lighter|heavier|extra|left|in (?:reserve|the tank))\b/i;
const OTHER_DAY = /\b(?:last (?:time|week|month|episode|year)|next (?:time|week|month|episode)|used to|ramp-?up|warm-?up|lighter set|light set|i did|a year ago|someday|at home|if you (?:only )?have|start with|beginners?)\b/i;

const sentenceOf = (text: string, at: number): string => {
  const from = Math.max(text.lastIndexOf(". ", at), text.lastIndexOf("/ ", at), text.lastIndexOf("? ", at), text.lastIndexOf("! ", at)) + 1;
  const to = text.slice(at).search(/[.?!/](?:\s|$)/);
  return text.slice(from, to < 0 ? text.length : at + to);
};

const inSameForm = (said: NumberSaid, value: number): string => (said.inWords && Number.isInteger(value) ? numberWords(value) : String(value));

function replace(line: Line, said: NumberSaid, value: number): string {
  const word = inSameForm(said, value);
  const capital = /^[A-Z]/.test(line.text.slice(said.start, said.end)) ? word.charAt(0).toUpperCase() + word.slice(1) : word;
  return line.text.slice(0, said.start) + capital + line.text.slice(said.end);
}

export const saidNumbers = defineBlockRule({
  meta: {
    id: "said-numbers", version: 2, subject: "words", level: "fix", moment: "before speaking",
    summary: "Numbers said about sets, repetitions, load, rest and tempo agree with the set line.",
    why: "When the voice says one number and the picture or the handout another, viewers ask which is right, or guess.",
    source: PRACTICE,
    yieldsTo: ["one-unit-said"],
    messages: {
      differs: "{name}: the voiceover says {said} for {what}, the set line says {planned}. Change one of them.",
      cueDiffers: "{name}: a cue says {said} for {what}, the set line says {planned}. Change one of them.",
    },
  },
  check({ block }, _options, report) {
    const working = workingSets(block);
    if (working.length === 0) return;
    const schemes = setLinesOf(block).flatMap(({ parse }) => (parse.ok ? [parse.scheme] : []));
    for (const line of [...wordsOf(block, "cue"), ...wordsOf(block, "say")]) {
      for (const said of numbersSaid(line.text)) {
        const before = line.text.slice(0, said.start);
        const after = line.text.slice(said.end).replace(/^(?:-| to | or )(?:\d+|\w+)(?=\s)/, (range) => (numbersSaid(range).length > 0 ? "" : range));
        const kind = KINDS.find(({ behind, ahead }) => behind.test(after) && (!ahead || ahead.test(before)));
        if (!kind || ASIDE_BEFORE.test(before) || (kind.name !== "repetitions in reserve" && ASIDE_AFTER.test(after)) || OTHER_DAY.test(sentenceOf(line.text, said.start))) continue;
        const value = said.value * (kind.factor ?? 1);
        const known = schemes.map((scheme) => kind.values(scheme)).filter((values) => values !== null);
        const planned = working.map(({ scheme }) => kind.values(scheme)).filter((values) => values !== null);
        const total = kind.name === "sets" ? planned.flat().reduce((sum, each) => sum + each, 0) : Number.NaN;
        if (planned.length === 0 || value === total || known.some((values) => values.includes(value))) continue;
        const only = planned.length === 1 ? planned[0] ?? [] : [];
        const right = only[0] !== undefined && (only.length === 1 || kind.name === "load") ? only[0] / (kind.factor ?? 1) : null;
        const shown = (values: readonly number[]): string => (kind.name !== "load" && values.length > 1 ? `${values[0]} to ${values.at(-1)}` : String(values[0]));
        report({
          block, line, range: { start: said.start, end: said.end }, message: line.kind === "cue" ? "cueDiffers" : "differs", ...(line.kind === "cue" ? { moment: "before filming" as const } : {}),
          data: { name: blockName(block), said: `${line.text.slice(said.start, said.end)}${kind.factor ? " minutes" : ""}`, what: kind.name, planned: `${planned.map(shown).join(" or ")}${kind.name === "rest" ? " s" : ""}` },
          remedies: right === null || !Number.isInteger(right * 2) ? [] : [{ label: `Says ${inSameForm(said, right)} instead`, edits: [{ type: "set-line", line: line.id, fields: { text: replace(line, said, right) } }] }],
        });
      }
    }
  },
});
