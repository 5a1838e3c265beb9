import { charactersIn, endsSentence, speak, type Pace } from "../../speech";
import { spelledForReader } from "./reader-spelling";

/** Words that are read together: never parted by a line or a caption. */
export interface Atom {
  readonly text: string;
  readonly characters: number;
  /** Seconds of sound, and of silence after it. */
  readonly seconds: number;
  readonly pause: number;
  /** What parting it from what follows costs the reader; 0 after a sentence. */
  readonly breakCost: number;
  /** A sentence, or the line, ends here. */
  readonly ends: boolean;
}

/**
 * What a break costs, by the place: after punctuation best, then before conjunctions, then before prepositions; a small word
 * never stands parted from what it belongs to if that can be helped. Order of the places: see `CAPTION_LIMITS`; figures: common practice, no source.
 */
const COST = { sentence: 0, breath: 1, clause: 2, conjunction: 4, preposition: 7, word: 12, leaning: 24 } as const;

const CONJUNCTION = /^(?:and|but|or|nor|so|then|because|while|until|when|where|if|as|before|after|since|although|unless|than|which|who|that)$/i;
const PREPOSITION = /^(?:with|without|from|to|into|in|on|at|for|over|under|between|through|towards?|across|behind|along|by|of|about|around|against|below|above|per)$/i;
/** Articles, pronouns, auxiliaries and the like: what follows belongs to them. */
const LEANING = /^(?:a|an|the|this|that|these|those|each|every|some|any|no|my|your|his|her|its|our|their|i|you|he|she|it|we|they|is|are|was|were|am|be|been|do|does|did|don't|doesn't|can|can't|could|will|won't|would|should|must|may|might|not|never|has|have|had|very|as|to|of|let|let's|that's|it's|i'm|you're|we're|they're)$/i;

const FIGURE = /^[("'“‘]*[\d½¼¾][\d.,:/½¼¾-]*$/;
const UNIT = /^(?:x|×|kg|lbs?|km|cm|mm|m|s|min|reps?|sets?|seconds?|minutes?|hours?|rounds|steps|degrees|percent|RIR|RPE|RM)[.,;:!?)"'”’]*$/;
/** A figure belongs to these before it. */
const OPENS_FIGURE = /^(?:x|×|set|rest|tempo|RIR|RPE|week|number|mark|part|day|zone|at)$/i;

const isBreath = (word: string): boolean => word === "/";
const bare = (word: string): string => word.replace(/^[("'“‘[]+|[)"'”’\].,;:!?…]+$/g, "").replace(/[’]/g, "'");

/** Whether two neighbouring words are one: "42.5 kg", "3 x 8", "tempo 3-1-1-0". */
const belongs = (word: string, next: string): boolean =>
  (FIGURE.test(word) && UNIT.test(next)) || (/^[x×]$/.test(word) && /^\d|^AMRAP/.test(next)) || (OPENS_FIGURE.test(word) && FIGURE.test(next.replace(/[.,;:!?]+$/, ""))) || /^[-–—]$/.test(next);

/** @param ends - a sentence does, after the word */
function costAfter(word: string, next: string | undefined, ends: boolean): number {
  if (next === undefined || ends) return COST.sentence;
  if (isBreath(next)) return COST.breath;
  if (/[,;:–—]["'”’)\]]*$/.test(word) || /^[–—-]$/.test(word)) return COST.clause;
  if (LEANING.test(bare(word)) || PREPOSITION.test(bare(word)) || CONJUNCTION.test(bare(word))) return COST.leaning;
  if (CONJUNCTION.test(bare(next))) return COST.conjunction;
  return PREPOSITION.test(bare(next)) ? COST.preposition : COST.word;
}

/** Silence after a word that ends a clause, as `speak` counts it. */
function pauseAfter(word: string, ends: boolean, breath: boolean, pace: Pace): number {
  const closing = ends ? pace.sentenceSeconds : /[,;:]["'”’)\]]*$/.test(word) ? pace.commaSeconds : 0;
  return Math.max(closing, breath ? pace.breathSeconds : 0);
}

/** Whether a sentence ends at a word; a short form's full stop ends none, so the words beside it are looked at. */
const endsAt = (words: readonly string[], at: number): boolean => endsSentence(words.slice(Math.max(0, at - 3), at + 1).join(" "), words.slice(at + 1, at + 3).join(" "));

/** A word too long for a line is cut where it must be. */
function pieces(word: string, width: number): string[] {
  if (charactersIn(word) <= width) return [word];
  const letters = Array.from(word);
  const out: string[] = [];
  for (let at = 0; at < letters.length; at += width) out.push(letters.slice(at, at + width).join(""));
  return out;
}

/**
 * A say line as atoms, spelled for the reader. Their seconds and pauses add up to what `speak` gives for the line, the pause after
 * the last one aside, which is a sentence's.
 * @param width - characters of a caption's line; no atom is longer
 */
export function atomsOf(line: string, pace: Pace, width: number): Atom[] {
  const words = spelledForReader(line).split(" ").filter(Boolean);
  const atoms: Atom[] = [];
  let start = 0;
  words.forEach((word, at) => {
    if (isBreath(word)) {
      start = at + 1;
      return;
    }
    const next = words[at + 1];
    const whole = words.slice(start, at + 1).join(" ");
    if (next !== undefined && !isBreath(next) && belongs(word, next) && charactersIn(`${whole} ${next}`) <= width) return;
    start = at + 1;
    const after = next !== undefined && isBreath(next);
    const last = words.slice(at + 1).every(isBreath);
    const parts = pieces(whole, width);
    const ends = endsAt(words, at);
    const seconds = speak(whole, pace).seconds / parts.length;
    parts.forEach((text, part) => {
      const closes = part === parts.length - 1;
      const breakCost = closes ? (after && !ends ? COST.breath : costAfter(word, next, ends)) : COST.leaning;
      atoms.push({ text, characters: charactersIn(text), seconds, pause: !closes ? 0 : last ? pace.sentenceSeconds : pauseAfter(word, ends, after, pace), breakCost: last && closes ? 0 : breakCost, ends: closes && (last || breakCost === COST.sentence) });
    });
  });
  return settled(atoms, line, pace);
}

/** Words said alone are drawn out at their ends; the line's own seconds count. */
function settled(atoms: readonly Atom[], line: string, pace: Pace): Atom[] {
  const alone = atoms.reduce((sum, { seconds }) => sum + seconds, 0);
  const silence = atoms.slice(0, -1).reduce((sum, { pause }) => sum + pause, 0);
  const sound = speak(line, pace).seconds - silence;
  const factor = alone > 0 && sound > 0 ? sound / alone : 1;
  return atoms.map((atom) => ({ ...atom, seconds: atom.seconds * factor }));
}
