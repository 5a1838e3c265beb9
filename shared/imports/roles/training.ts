import type { Lesson } from "../learning/read";
import type { Token } from "../schemes/figures";
import { candidatesIn, isFigure, isRange } from "./stream";
import { ROLES, upperOf, type Role } from "./tagger";

const WORD_ROLES: ReadonlySet<Role> = new Set(["side", "hand", "bodyweight", "amrap", "same"]);

/** The candidate a mark belongs to, by its number: the last figure, or word, that begins at or before the marked word; -1 for none. */
function markedAt(tokens: readonly Token[], places: readonly number[], word: number, role: Role): number {
  const isWord = WORD_ROLES.has(role);
  let chosen = -1;
  places.forEach((place, at) => {
    const token = tokens[place] as Token;
    const next = tokens.slice(place + 1).find(({ at: from }) => from > token.at)?.at ?? Infinity;
    if (token.at <= word && word < next && (isWord || isFigure(token) || (role === "tempo" && /^(?:no|nothing)$/.test(token.text)) || !/^(?:each|per|every|either|both|a|same|many|no|nothing|long|other|bar|empty)$/.test(token.text)) && (chosen < 0 || isFigure(token) !== isWord)) chosen = at;
  });
  return chosen;
}

/** The true role of each candidate, by its number. */
export function labelsOf({ ready: { words, heard: { tokens } }, marked }: Lesson): number[] {
  const places = candidatesIn(tokens);
  const labels = places.map(() => 0);
  for (const [word, role] of marked.roles) {
    const at = markedAt(tokens, places, word, role);
    if (at < 0) continue;
    labels[at] = ROLES.indexOf(role);
    // The mark of "8-10" is that of both its figures.
    if (!isRange(words[word]?.plain ?? "") || tokens[places[at - 1] ?? -1]?.at !== tokens[places[at] ?? -1]?.at) continue;
    labels[at - 1] = ROLES.indexOf(role);
    labels[at] = ROLES.indexOf(upperOf(role));
  }
  return labels;
}

/** The words at which figures begin that are told once for several exercises. */
export function forSeveralIn({ ready: { heard: { tokens } }, marked }: Lesson): ReadonlySet<number> {
  const places = candidatesIn(tokens);
  return new Set([...marked.forSeveral].flatMap((word) => tokens[places[markedAt(tokens, places, word, marked.roles.get(word) ?? "none")] ?? -1]?.at ?? []));
}
