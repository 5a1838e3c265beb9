import type { Lesson } from "../learning/read";
import type { Token } from "../schemes/figures";
import { candidatesIn, isFigure } from "./stream";
import { ROLES, type Role } from "./tagger";

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
export function labelsOf({ ready: { heard: { tokens } }, marked }: Lesson): number[] {
  const places = candidatesIn(tokens);
  const labels = places.map(() => 0);
  for (const [word, role] of marked.roles) {
    const at = markedAt(tokens, places, word, role);
    if (at >= 0) labels[at] = ROLES.indexOf(role);
  }
  return labels;
}

/** The words at which figures begin that are told once for several exercises. */
export function forSeveralIn({ ready: { heard: { tokens } }, marked }: Lesson): ReadonlySet<number> {
  const places = candidatesIn(tokens);
  return new Set([...marked.forSeveral].flatMap((word) => tokens[places[markedAt(tokens, places, word, marked.roles.get(word) ?? "none")] ?? -1]?.at ?? []));
}
