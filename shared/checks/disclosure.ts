import type { Partner } from "../episode";

/** Understood by anybody as "I am paid or favoured". */
const PLAIN = /\b(?:ad|advert|advertisement|advertising|paid|pays? (?:me|for)|i earn (?:a )?commission|my own (?:business|brand|company|shop)|i own)\b/i;
/** Heard often and found unclear by regulators when it stands alone. */
const WEAK = /\b(?:gifted|sponsored|spon|affiliate|collab|thanks to|in association with|supported by|free)\b/i;

const RELATION_WORDS: Readonly<Record<Partner["relation"], (name: string) => string>> = {
  paid: (name) => `Ad: ${name} pays for this episode.`,
  gifted: (name) => `Ad: ${name} sent me products for free.`,
  affiliate: (name) => `Ad: I earn a commission when you buy from ${name}.`,
  "own brand": (name) => `Ad: ${name} is my own business.`,
};

/** Does a text say in a plain word that there is something in it for the coach? */
export const isPlain = (text: string): boolean => PLAIN.test(text);
/** The unclear word a text hides it behind, or null. */
export const weakWord = (text: string): string | null => WEAK.exec(text)?.[0] ?? null;
export const names = (text: string, partner: Partner): boolean => text.toLowerCase().includes(partner.name.trim().toLowerCase());
/** Plain words for a partner: the coach's own where they are plain and name the partner. */
export function plainWords(partner: Partner): string {
  const own = partner.disclosure.trim();
  return isPlain(own) && names(own, partner) ? own : RELATION_WORDS[partner.relation](partner.name.trim());
}
