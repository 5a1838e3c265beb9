import { numberWords } from "./numbers";

/** A rewriting of one written shape into words or into a simpler written shape that later steps read. */
export interface Saying {
  readonly written: RegExp;
  readonly said: (match: readonly string[]) => string;
}

const part = (match: readonly string[], index: number): string => match[index] ?? "";

/** Longest work or rest that is named by its seconds alone, and the shortest of two equal ones, which else are reps of each side. */
const [MOST_INTERVAL, LEAST_EQUAL] = [60, 30];

/** Two round figures said one after the other, or null where they are something else (a blood pressure, reps of each side). */
function pairWords(first: number, second: number): string | null {
  const isPair = first === second ? first >= LEAST_EQUAL : first + second === 100 || Math.max(first, second) <= MOST_INTERVAL;
  return isPair ? `${numberWords(first)} ${numberWords(second)}` : null;
}

/** "1" or "one" is a single set. */
const setsWord = (count: string): string => (Number(count) === 1 ? "set" : "sets");

/**
 * Set-line shorthand inside running text. Numbers and units are left in figures for the later steps.
 */
export const SCHEME_SAYINGS: readonly Saying[] = [
  // L4-L5, T8-T10: joints of the spine
  { written: /\b([A-Z]\d{1,2})[-–](?=[A-Z]\d)/g, said: (m) => `${part(m, 1)} to ` },
  // Set 2/3, week 1/4
  { written: /\b(set|round|week|day|part|block|exercise|session|lap)\s(\d{1,2})\s?\/\s?(\d{1,2})(?![\w/])/gi, said: (m) => `${part(m, 1)} ${part(m, 2)} of ${part(m, 3)}` },
  // 40/20 x 8: work and rest, so often
  { written: /(?<![\w/.])([1-9][05]\/(?:[1-9][05]|5))\s?[x×]\s?(?=\d{1,2}\b)(\d{1,2})(?:\s?(?:rounds|times)\b)?/gi, said: (m) => `${part(m, 1)} for ${part(m, 2)} ${Number(part(m, 2)) === 1 ? "round" : "rounds"}` },
  // E2MOM x 6 rounds, plank x 30 s: how long
  { written: /(?<=\p{L}\s)[x×]\s?(?=\d+(?:[-–:]\d+)?\s?(?:rounds?|minutes?|mins?|seconds?|secs?|s|hours?|m|km|weeks?|wks?)(?![\p{L}]))/giu, said: () => "for " },
  // 20 + 2x20: a bar and two plates; after sets the plus is more sets
  { written: /(?<![\w.x×/-])(?<![x×]\s)(\d+(?:\.\d+)?\s?(?:kg|lb)?\s?\+\s?)(\d)\s?[x×]\s?(?=\d)/gi, said: (m) => `${part(m, 1)}${part(m, 2)} times ` },
  // a ladder: 12-10-8, 15/12/10/8
  { written: /(?<![\w./-])(\d{1,3}(?:([-/])\d{1,3})(?:\2\d{1,3})+)(?![\w/-])/g, said: (m) => part(m, 1).split(/[-/]/).map((reps) => numberWords(Number(reps))).join(" ") },
  // 3 sets x 10 reps
  { written: /\b(sets?)\s*[x×]\s*(?=\d)/gi, said: (m) => `${part(m, 1)} of ` },
  // 5x5x100 kg
  { written: /(?<![\w.])(\d{1,2})\s?[x×]\s?(\d{1,3})\s?[x×]\s?(?=\d)/gi, said: (m) => `${part(m, 1)} ${setsWord(part(m, 1))} of ${part(m, 2)} at ` },
  // 2x32 kg: a bell in each hand
  { written: /(?<![\d.])(\d)\s?[x×]\s?(?=\d+(?:[.,]\d+)?\s?(?:kg|lb))/gi, said: (m) => `${part(m, 1)} times ` },
  // bodyweight-10 kg
  { written: /\b(bodyweight)\s?-\s?(?=\d)/gi, said: (m) => `${part(m, 1)} minus ` },
  // 27,5 kg: a decimal comma
  { written: /(?<![\d,])(\d{1,3}),(\d{1,2})(?=\s?(?:kg|lb|m|s|cm|km)\b)/g, said: (m) => `${part(m, 1)}.${part(m, 2)}` },
  // 3x8-10, 3 × 40 m, 3 x AMRAP
  { written: /(?<![\w.])(\d{1,2})\s?[x×]\s?(?=\d|AMRAP|max\b|failure\b)/gi, said: (m) => `${part(m, 1)} ${setsWord(part(m, 1))} of ` },
  // 1x per week, 2x/week, 1x weekly
  { written: /\b([12])\s?[x×]\s?(?:(?:per|a)\s|\/\s?)(day|week|month|year|session)\b/gi, said: (m) => `${part(m, 1) === "1" ? "once" : "twice"} a ${part(m, 2)}` },
  { written: /\b([12])\s?[x×](?=\s(?:daily|weekly|monthly)\b)/gi, said: (m) => (part(m, 1) === "1" ? "once" : "twice") },
  { written: /(?<![\w.,])1\s?[x×](?!\w|\sbodyweight\b)/gi, said: () => "1 time" },
  // 2x bodyweight, 10x
  { written: /\b(\d+(?:\.\d+)?)\s?[x×](?!\w)/gi, said: (m) => `${part(m, 1)} times` },
  { written: /(?<!\w)[x×]\s?(?=\d)/gi, said: () => "times " },
  // RIR 2, RIR 1-2, 2 RIR; RPE is spelled like any letters
  { written: /\bRIR:?\s*(\d+(?:\.\d+)?(?:\s?[-–]\s?\d+(?:\.\d+)?)?)/g, said: (m) => `${part(m, 1)} RIR` },
  // 80 % 1RM, 80 % of 1RM
  { written: /%\s*(?:of\s+)?(?=(?:your\s+)?\d\s?RM\b)/g, said: () => "% of " },
  // 10/side, 20 kg/hand
  // 2:05/500 m, 5:30/km
  { written: /(?<=\d:[0-5]\d)\s?\/\s?(?=\d+\s?k?m\b)/g, said: () => " per " },
  { written: /(?<=\d:[0-5]\d)\s?\/\s?(?=(?:km|mile)\b)/g, said: () => " per " },
  { written: /\s?\/\s?(side|leg|arm|hand|foot|set|min|minute|week|day|session)\b/gi, said: (m) => ` per ${part(m, 1) === "min" ? "minute" : part(m, 1)}` },
  // 20/10, 30/30: seconds of work and of rest; 80/20: a share of a hundred; 90/90: the joints of a stretch
  { written: /(?<!pressure\D{0,20})(?<![\w/.])([1-9][05])\/([1-9][05]|5)(?![\w/.%]|\s?(?:kg|lb)\b)/gi, said: (m) => pairWords(Number(part(m, 1)), Number(part(m, 2))) ?? part(m, 0) },
  // 8/8: eight on one side, eight on the other
  { written: /(?<![\w/.])(\d{1,3})\/(\1)(?![\w/])/g, said: (m) => `${part(m, 1)} and ${part(m, 2)}` },
  { written: /\s?@\s?/g, said: () => " at " },
];
