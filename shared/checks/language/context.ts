/**
 * What surrounds a match decides whether the text asks for it: prohibitions, warnings, stop rules, quotes, and
 * permissions that turn a negation round ("don't worry if ...").
 */

import { CARRY_ON, CONDITION, DISMISS_AFTER, DROP, ENDORSED, NEGATOR, PERMIT, PRAISE, PUT_DOWN_AFTER, REPORT, TAKEN_BACK } from "./phrases";

/** Opens a new thought: a negation before it no longer governs what follows. */
const TURN = /[,;:.!?]|\s-\s|\b(?:but|so|then|just|until|till|because|unless|instead(?! of))\b/g;

const TAKES_BACK = /\b(?:(?:just|only|i'?m) (?:kidding|joking)|who am i kidding|scratch that)\b[^a-z0-9]*(?=(?:[a-z0-9']+[^a-z0-9']+){2})/;

/** What was said as a joke and taken back is blanked out, so that only where the text lands is read. Same length as before. */
export function landing(text: string): string {
  const found = TAKES_BACK.exec(text);
  if (!found) return text;
  const end = found.index + found[0].length;
  return " ".repeat(end) + text.slice(end);
}

export interface Surroundings {
  /** Normalised text. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

interface Sentence {
  readonly before: string;
  readonly after: string;
  /** From the last turn of thought to the match. */
  readonly clause: string;
  /** The rest of the text behind this sentence. */
  readonly later: string;
}

function sentenceAround({ text, start, end }: Surroundings): Sentence {
  const head = text.slice(0, start);
  const from = Math.max(...[". ", "! ", "? ", ".\"", "\n"].map((mark) => head.lastIndexOf(mark))) + 1;
  const tail = text.slice(end);
  const stop = /[.!?](?=\s|$|")/.exec(tail);
  const to = stop ? stop.index + 1 : tail.length;
  const before = head.slice(from);
  let turn = 0;
  for (const match of before.matchAll(TURN)) turn = match.index + match[0].length;
  return { before, after: tail.slice(0, to), clause: before.slice(turn), later: tail.slice(to) };
}

const negations = (words: string): number => [...words.matchAll(NEGATOR)].length;

/** Is the safe habit at this place put down, before or after? */
export function isDismissed(place: Surroundings): boolean {
  const { before, clause, after } = sentenceAround(place);
  if (REPORT.test(before)) return false;
  if (DROP.test(clause) || PERMIT.test(clause)) return true;
  return negations(clause) === 0 && PUT_DOWN_AFTER.test(after);
}

/** Does somebody say that what stands at this place is fine, or to carry on with it? */
export function isPermitted(place: Surroundings): boolean {
  const { before, clause, after } = sentenceAround(place);
  if (REPORT.test(before) || TAKEN_BACK.test(after)) return false;
  if (PERMIT.test(before.slice(-90)) || DISMISS_AFTER.test(after) || (negations(clause) === 0 && PRAISE.test(after))) return true;
  return CONDITION.test(before) && negations(clause) === 0 && CARRY_ON.test(after);
}

/** Does the text reject, forbid, quote or warn of what stands at this place? */
export function isSilenced(place: Surroundings, as: "fault" | "flat"): boolean {
  const { before, clause, after, later } = sentenceAround(place);
  const words = place.text.slice(place.start, place.end);
  if (REPORT.test(before) && !ENDORSED.test(after + later)) return true;
  if (/^\s*"?\?\s*(?:no|nope|never|not|don'?t|stop)\b/.test(after + later)) return true;
  if (TAKEN_BACK.test(after) && !DISMISS_AFTER.test(after)) return true;
  if (/^\s*(?:no|nope|don'?t|never|stop|please don'?t|that'?s (?:wrong|not|the mistake))\b/.test(later)) return true;
  if (/\b(?:don'?t|doesn'?t|never|not|won'?t) (?:do|believe in|buy|like|want|use|say|teach|preach)(?: the| that| any)?[ "']*$/.test(before)) return true;
  // A complete thought with its own negation, negated once more: "don't bench without a spotter".
  if (as === "flat") return /\b(?:don'?t|do not|never|nobody should|not|avoid)\b/.test(clause) && !PERMIT.test(clause);
  if (PERMIT.test(before.slice(-90)) || DISMISS_AFTER.test(after) || PERMIT.test(words)) return false;
  if (negations(clause) > 0 || negations(words) > 0) return true;
  return CONDITION.test(before) && !CARRY_ON.test(after);
}
