import { analyse, readGrammar } from "./grammar";
import { LABEL_READERS } from "./grammar/labels";
import type { Reading } from "./grammar/context";
import { likenessOf } from "./likeness";
import { BREAK } from "./tokens";
import type { CueInput, CueLabel } from "./types";

/**
 * How likely a label must be, from 0 to 1. A plain finding falls when likeness finds it far-fetched, and likeness speaks
 * alone when it is fairly sure. Chosen on lines of writers the model had not seen, for silence on good coaching first.
 */
const KEEP = 0.1;
const ADD = 0.45;
/** Where the grammar reader sees the fault named only to be turned down, likeness must be all but certain. */
const OVERRULE = 0.9;

/** Likeness was learned from single lines; a longer text is read in passages of whole sentences, of at most so many words. */
const PASSAGE = 40;

interface Passage {
  readonly start: number;
  readonly end: number;
}

function passagesOf({ tokens }: Reading, length: number): Passage[] {
  if (tokens.length <= PASSAGE) return [{ start: 0, end: length }];
  const starts = tokens.flatMap(({ gap }, at) => (at === 0 || gap >= BREAK.sentence ? [at] : []));
  const passages: Passage[] = [];
  let first = 0;
  starts.forEach((_at, i) => {
    const next = starts[i + 1] ?? tokens.length;
    const after = starts[i + 2] ?? tokens.length;
    if (next < tokens.length && after - first <= PASSAGE) return;
    passages.push({ start: tokens[first]?.start ?? 0, end: tokens[next]?.start ?? length });
    first = next;
  });
  return passages;
}

/**
 * What a piece of coaching text asks, praises or claims that it should not, in the order of the label list; each label at most once.
 *
 * An empty answer means acceptable. Prohibitions, corrections, stop rules and rejected quotes are silent; when unsure, it is silent.
 */
export function readCue(input: CueInput): CueLabel[] {
  const text = analyse(input.text);
  const plain = readGrammar(text, input);
  const passages = passagesOf(text, input.text.length);
  const likely = passages.map(({ start, end }) => {
    if (passages.length === 1) return likenessOf(text, input, plain);
    const part = { ...input, text: input.text.slice(start, end) };
    const reading = analyse(part.text);
    return likenessOf(reading, part, readGrammar(reading, part));
  });
  return LABEL_READERS.flatMap(({ label, ruling }, index): CueLabel[] => {
    const odds = likely.map((each) => each[index] ?? 0);
    const most = Math.max(...odds);
    const found = plain.found.find((each) => each.label === label);
    if (found) return most > KEEP ? [found] : [];
    const passage = passages[odds.indexOf(most)];
    if (most <= (plain.turnedDown.includes(label) ? OVERRULE : ADD) || !passage) return [];
    return [{ label, ...trimmed(input.text, passage), by: "likeness", ruling }];
  });
}

/** Without the blanks around it. */
function trimmed(text: string, { start, end }: Passage): Passage {
  const said = text.slice(start, end);
  return { start: start + said.length - said.trimStart().length, end: end - said.length + said.trimEnd().length };
}
