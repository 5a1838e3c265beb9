import type { Mention } from "../names/find";
import { nameWord } from "../names/lexicon";
import type { Part } from "../order/speech";

/** An exercise of the running order: the words at which the speaker turns to it, and names it. */
export interface Turned {
  readonly part: Part;
  readonly turn: number;
  readonly at: number;
}

/** Is it this exercise that is named, in short or in full? */
export function isNamed(mention: Pick<Mention, "name">, { part }: Turned): boolean {
  if (mention.name.exercise !== null && mention.name.exercise.id === part.exercise?.id) return true;
  const own = new Set([...(part.exercise?.name ?? part.title).split(/[^A-Za-z]+/), ...part.said.split(" ")].map((word) => nameWord(word.toLowerCase())));
  return mention.name.words.every((word) => own.has(word));
}
