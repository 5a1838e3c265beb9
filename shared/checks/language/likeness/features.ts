import { around, inside } from "../grammar/scope";
import { phrasesIn, type Reading } from "../grammar/context";
import { PHRASES, type PhraseKind } from "../grammar/phrases";
import type { Grammatical } from "../grammar";
import type { CueInput } from "../types";
import { sensesOf } from "./senses";

/** Words at least this long also count by their beginning. */
const STEM = 5;

/** What governs a word within its clause, by a letter each: a negation, something dropped, a permission, a condition. */
const GOVERNORS: readonly (readonly [letter: string, kinds: readonly PhraseKind[]])[] = [
  ["n", ["negator"]], ["d", ["drop"]], ["p", ["permit", "grant"]], ["c", ["condition"]],
];

function governors(text: Reading, at: number): string[] {
  const { clause } = around(text, { from: at, to: at + 1 });
  const before = { from: clause.from, to: at };
  const letters = GOVERNORS.filter(([, kinds]) => kinds.some((kind) => phrasesIn(text, kind).some((span) => inside(span, before)))).map(([letter]) => letter);
  return text.tokens[at]?.quoted ? [...letters, "q"] : letters;
}

/** How the line is written: codes in capitals, names inside a sentence, figures, marks. */
const SURFACE: readonly (readonly [name: string, shown: RegExp])[] = [
  ["capitals", /\b(?=[A-Z0-9]*[A-Z][A-Z])[A-Z][A-Z0-9]{3,}\b/], ["name", /[a-z,] [A-Z][a-z]{3,}/], ["two names", /[A-Z][a-z]+ (?:and |& )?[A-Z][a-z]+/], ["figures", /\d/], ["percent", /%|per ?cent/],
  ["question", /\?/], ["exclamation", /!/], ["quote", /["\u201c]/], ["and sign", /&/],
];

/**
 * Everything the learned reader knows of a line, as names: words and their neighbours, senses and their
 * neighbours, what governs them, turns of phrase, the place of the line, and what the grammar reader said.
 *
 * @returns distinct names, in no order that matters
 */
export function featuresOf(text: Reading, input: CueInput, grammar: Grammatical): Set<string> {
  const found = new Set<string>([`family:${input.family}`, `audience:${input.audience}`, `slot:${input.slot}`]);
  for (const word of (input.exercise ?? "").toLowerCase().split(/\s+/)) if (word !== "") found.add(`exercise:${word}`);
  for (const { label } of grammar.found) found.add(`grammar:${label}`);
  for (const label of grammar.turnedDown) found.add(`turned down:${label}`);
  for (const kind of Object.keys(PHRASES) as PhraseKind[]) if (phrasesIn(text, kind).length > 0) found.add(`turn:${kind}`);
  for (const [name, shown] of SURFACE) if (shown.test(input.text)) found.add(`looks:${name}`);
  const { tokens } = text;
  const senses = sensesOf(tokens);
  tokens.forEach(({ word, lemma }, at) => {
    const before = tokens[at - 1]?.lemma ?? "^";
    found.add(`l:${lemma}`);
    if (word !== lemma) found.add(`w:${word}`);
    found.add(`b:${before} ${lemma}`);
    if (at === tokens.length - 1) found.add(`b:${lemma} $`);
    if (word.length > STEM) found.add(`s:${word.slice(0, STEM)}`);
    const here = senses[at] ?? [];
    const ruled = governors(text, at);
    for (const letter of ruled) found.add(`${letter}:${lemma}`);
    for (const sense of here) {
      found.add(sense);
      found.add(`${before} ${sense}`);
      found.add(`${sense} ${tokens[at + 1]?.lemma ?? "$"}`);
      found.add(`${input.family} ${sense}`);
      if (input.audience !== "general") found.add(`${input.audience} ${sense}`);
      for (const letter of ruled) found.add(`${letter}:${sense}`);
    }
  });
  return found;
}
