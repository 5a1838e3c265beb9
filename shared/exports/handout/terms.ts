import type { Scheme } from "../../training";
import type { Run } from "../paper";

interface Term {
  readonly name: string;
  readonly meaning: string;
  /** Whether a set line of the plan uses it, */
  readonly inScheme: (scheme: Scheme) => boolean;
  /** or the words of the plan do. */
  readonly inWords: RegExp;
}

const TERMS: readonly Term[] = [
  {
    name: "Set, rep", meaning: "A rep is the movement done once; a set is several reps in a row, followed by a rest.",
    inScheme: (scheme) => scheme.sets !== undefined, inWords: /\b(?:sets?|reps?)\b/i,
  },
  {
    name: "Each side", meaning: "All reps with one side, then as many with the other; together they are one set.",
    inScheme: (scheme) => scheme.eachSide === true, inWords: /\beach side\b/i,
  },
  {
    name: "Tempo", meaning: "The seconds each part of a rep takes: down, pause, up, pause. Often written in four figures, such as 3-1-1-0.",
    inScheme: (scheme) => scheme.tempo !== undefined, inWords: /\btempo\b/i,
  },
  {
    name: "Reps in reserve (RIR)", meaning: "How many more good reps you could have done when you stop the set.",
    inScheme: (scheme) => scheme.rir !== undefined, inWords: /\bRIR\b|\bin reserve\b/i,
  },
  {
    name: "Effort of 10 (RPE)", meaning: "How hard a set felt. 10 is nothing left; 8 leaves about two good reps.",
    inScheme: (scheme) => scheme.rpe !== undefined, inWords: /\bRPE\b/,
  },
  {
    name: "One-rep maximum (1RM)", meaning: "The most you can lift once with good form. There is no need to test it: a coach can estimate it from lighter sets.",
    inScheme: (scheme) => scheme.load?.unit === "%1RM", inWords: /\b1RM\b|\bone-rep max/i,
  },
  {
    name: "As many reps as you can (AMRAP)", meaning: "Go on while every rep is clean; stop at the first that is not.",
    inScheme: (scheme) => scheme.amrap === true, inWords: /\bAMRAP\b/i,
  },
  {
    name: "Every minute (EMOM)", meaning: "Begin at the start of each minute; what is left of the minute is your rest.",
    inScheme: (scheme) => scheme.emomMinutes !== undefined, inWords: /\bEMOM\b/i,
  },
  {
    name: "Drop set", meaning: "Take weight off and go on at once, without a rest.",
    inScheme: (scheme) => scheme.dropSets !== undefined, inWords: /\bdrop[- ]sets?\b/i,
  },
];

const RAMP_UP = { name: "Ramp-up", meaning: "Light sets of the same movement before the real ones. They are practice, so stop long before it gets hard." } as const;

/** The terms this plan uses, explained; the others would only be in the way. */
export function termsUsed(schemes: readonly Scheme[], rampUp: boolean, text: string): { readonly key: string; readonly value: readonly Run[] }[] {
  const used = TERMS.filter((term) => schemes.some(term.inScheme) || term.inWords.test(text));
  const all = rampUp || /\bramp-?up\b/i.test(text) ? [...used, RAMP_UP] : used;
  return all.map(({ name, meaning }) => ({ key: name, value: [{ text: meaning }] }));
}
