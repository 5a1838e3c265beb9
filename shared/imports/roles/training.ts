import type { Lesson } from "../learning/read";
import type { Token } from "../schemes/figures";
import { candidatesIn, isFigure } from "./stream";
import { ROLES, type Role } from "./tagger";

const WORD_ROLES: ReadonlySet<Role> = new Set(["side", "hand", "bodyweight", "amrap", "same"]);

/** The role of each candidate: a mark belongs to the last figure, or word, that begins at or before the marked word. */
export function rolesMarked(tokens: readonly Token[], marks: ReadonlyMap<number, Role>): Role[] {
  const places = candidatesIn(tokens);
  const roles = places.map((): Role => "none");
  for (const [word, role] of marks) {
    const isWord = WORD_ROLES.has(role);
    let chosen = -1;
    places.forEach((place, at) => {
      const token = tokens[place] as Token;
      const next = tokens.slice(place + 1).find(({ at: from }) => from > token.at)?.at ?? Infinity;
      if (token.at <= word && word < next && (isWord || isFigure(token) || (role === "tempo" && /^(?:no|nothing)$/.test(token.text)) || !/^(?:each|per|every|either|both|a|same|many|no|nothing|long|other|bar|empty)$/.test(token.text)) && (chosen < 0 || isFigure(token) !== isWord)) chosen = at;
    });
    if (chosen >= 0) roles[chosen] = role;
  }
  return roles;
}

/** The true role of each candidate, by its number. */
export const labelsOf = ({ ready: { heard }, marked }: Lesson): number[] => rolesMarked(heard.tokens, marked.roles).map((role) => ROLES.indexOf(role));
