import type { Mention } from "../names/find";
import { nameWord } from "../names/lexicon";
import type { Ordered } from "../schemes/compose";
import { plainIn } from "../source/words";
import type { Span, Word } from "../types";
import type { Turned } from "./turned";

/** Names that lay claim to a figure: "ten on the press", "for the curls I've got thirties". */

/** So many words from a figure its exercise may be named, when "for" or "on" leads to the name. */
const REACH = 6;
const LEADS = /^(?:for|on)$/;
const SOFT = /^(?:the|my|your|those|these|our|a|an)$/;

/** Is it this exercise that is named, in short or in full? */
export function isNamed(mention: Mention, { part }: Turned): boolean {
  if (mention.name.exercise !== null && mention.name.exercise.id === part.exercise?.id) return true;
  const own = new Set([...(part.exercise?.name ?? part.title).split(/[^A-Za-z]+/), ...part.said.split(" ")].map((word) => nameWord(word.toLowerCase())));
  return mention.name.words.every((word) => own.has(word));
}

/** The word that names an exercise in short: "press", "row". */
export const headOf = ({ part }: Turned): string => nameWord((part.said === "" ? (part.exercise?.name ?? part.title) : part.said).toLowerCase().split(/[^a-z]+/).at(-1) ?? "");

/** So many exercises away one may be meant by a word that fits several. */
export const APART = 2;

/** How a name lays claim to a figure beside it; null when it does not. */
export function claimOf({ from, to }: Ordered, mention: Span, words: readonly Word[]): string | null {
  if (mention.from > to && mention.from - to <= REACH) {
    const between = plainIn(words, to + 1, mention.from);
    if (between.length === 0) return "right before";
    const leads = between.findLastIndex((word) => LEADS.test(word));
    if (leads >= 0 && between.slice(leads + 1).every((word) => SOFT.test(word))) return between[leads] ?? null;
    if (between.every((word) => /^(?:reps|of|good|those|the|each|kilos|pounds|more)$/.test(word))) return "of";
  }
  if (mention.to <= from && from - mention.to <= REACH) {
    const lead = plainIn(words, mention.from - 2, mention.from).filter((word) => !SOFT.test(word)).at(-1) ?? "";
    if (LEADS.test(lead)) return `${lead} it`;
    if (from - mention.to <= 2) return "right after";
  }
  return null;
}
