import { namesIn } from "../names/find";
import { sentencesIn } from "../sentences/boundaries";
import { hesitationsIn } from "../sentences/hesitations";
import { inOneBreath, splitAtNames } from "../sentences/split-at-names";
import { wordClasses } from "../sentences/word-classes";
import { soundsIn } from "../source/sounds";
import type { Token } from "../schemes/figures";
import { hear, type Heard } from "./hear";
import { candidatesIn, isFigure } from "./stream";
import { ROLES, type Role } from "./tagger";
import { readMarked } from "../learning/transcript";

/** A transcript as its figures are read. */
export function heardIn(file: string): Heard {
  const { words } = readMarked(file);
  const skip = new Set([...soundsIn(words), ...hesitationsIn(words)]);
  const mentions = namesIn(words, skip);
  return hear(words, splitAtNames(words, sentencesIn(words, inOneBreath(words, mentions), false), mentions), mentions, skip, wordClasses(words));
}

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
export const labelsOf = (file: string, heard: Heard): number[] => rolesMarked(heard.tokens, readMarked(file).roles).map((role) => ROLES.indexOf(role));
