import { EXERCISES } from "../../../exercises";
import { analyse } from "../grammar";
import { LABEL_READERS } from "../grammar/labels";
import type { CueInput, JudgedLine } from "../types";

const line = (text: string, family: string, labels: JudgedLine["labels"], fields: Partial<CueInput> = {}): JudgedLine =>
  ({ text, family, slot: "cue", audience: "general", exercise: null, ...fields, labels });

/** What the catalogue advises is acceptable, by our own word. */
const advised = EXERCISES.flatMap(({ name, family, cues, avoid, cautions }) => [
  ...cues.map(({ text }) => line(text, family, [], { exercise: name })),
  ...avoid.map(({ instead }) => line(instead, family, [], { exercise: name })),
  ...cautions.map((text) => line(text, family, [], { exercise: name, slot: "safety" })),
]);

/** What each pattern of the grammar reader was written for, and what must stay silent. */
const patterned = LABEL_READERS.flatMap(({ label, patterns, habits = [], silent }) => [
  ...[...patterns, ...habits].map(({ example, family, only, audience }) => line(example, family ?? only?.[0] ?? "general", [label], { audience: audience?.[0] ?? "general" })),
  ...silent.map(({ text, family }) => line(text, family ?? "general", [])),
]);

export const LESSONS: readonly JudgedLine[] = [...advised, ...patterned];

/** Short orders only: "never" in front of a longer line may not reach its fault. */
const MOST_WORDS = 12;
const FORBID = ["Don't", "Never", "Please don't"] as const;

/** "Bounce it off the chest" is a fault, so "Never bounce it off the chest" is sound: the corpus need not say both. */
export function prohibitions(lines: readonly JudgedLine[]): JudgedLine[] {
  const orders = [...lines, ...patterned].filter(({ text, labels }) => {
    if (labels.length === 0 || /[,;:?!"\u201c]|\.\s/.test(text)) return false;
    const { tokens } = analyse(text);
    return tokens.length <= MOST_WORDS && tokens[0]?.pos === "VERB" && tokens[0].lemma === tokens[0].word;
  });
  return orders.map((order, i) => ({ ...order, text: `${FORBID[i % FORBID.length]} ${order.text.charAt(0).toLowerCase()}${order.text.slice(1)}`, labels: [] }));
}
