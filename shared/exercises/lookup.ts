import { EXERCISES } from "./catalogue";
import type { Exercise, Family } from "./types";
import { keyOf, phrases, spelledWords, wordsOf } from "./words";
import type { Word } from "./words";

const byId = new Map(EXERCISES.map((exercise) => [exercise.id, exercise]));

const namesOf = (exercise: Exercise): readonly string[] => [exercise.name, ...exercise.otherNames];

/** Every name of every exercise; a name is listed once in the catalogue, which its test keeps true. */
const byKey = new Map(EXERCISES.flatMap((exercise) => namesOf(exercise).map((name) => [keyOf(name), exercise] as const)));

const longestName = Math.max(...EXERCISES.flatMap((exercise) => namesOf(exercise).map((name) => wordsOf(name).length)));

/** The exercise a file points at, or null when the catalogue does not know the id. */
export const exerciseById = (id: string): Exercise | null => byId.get(id) ?? null;

/** The exercises of one family, in catalogue order. */
export const exercisesOfFamily = (family: Family): Exercise[] => EXERCISES.filter((exercise) => exercise.family === family);

/**
 * The exercise a whole text names, by its name or another name of it, or null.
 * Case, plurals, hyphens, apostrophes and common short forms ("DB", "1-arm") make no difference; any further word does.
 */
export const findExercise = (text: string): Exercise | null => byKey.get(keyOf(text)) ?? null;

/** Names that are also everyday words of a script: "on a bench", "step up the pace", "curl the toes". */
const EVERYDAY = /^(?:bench|breathing|bridge|crunch|curl|dip|goblet|lunge|pointer|squat|\w+ (?:up|down|out))$/;
const COUNT = /^(?:\d+|five|six|eight|ten|twelve|fifteen|twenty|thirty|easy|slow|some|few)$/;

/** Whether the words of `span` are meant as a name: said alone, counted, in the plural, or spelled with a hyphen. */
const isMeant = (span: readonly Word[], before: Word | undefined, alone: boolean): boolean =>
  !EVERYDAY.test(span.map((word) => word.text).join(" ")) || alone || COUNT.test(before?.text ?? "") || span.some((word) => word.marked);

interface Mention {
  readonly exercise: Exercise;
  readonly from: number;
  readonly to: number;
}

/** All names found in one phrase, overlapping ones too. Positions count words. */
function mentionsIn(words: readonly Word[]): Mention[] {
  const found: Mention[] = [];
  for (let from = 0; from < words.length; from += 1) {
    for (let to = from + 1; to <= Math.min(words.length, from + longestName); to += 1) {
      const span = words.slice(from, to);
      const exercise = byKey.get(span.map((word) => word.text).join(""));
      if (exercise && isMeant(span, words[from - 1], span.length === words.length)) found.push({ exercise, from, to });
    }
  }
  return found;
}

/**
 * The exercises a longer text names, in the order of the text, each once. Where names overlap the longest wins.
 * "Ten wall slides, ten band pull-aparts" gives two; "step up the pace" gives none.
 */
export function exercisesMentioned(text: string): Exercise[] {
  const mentioned = phrases(text).flatMap((phrase) => {
    const longestFirst = mentionsIn(wordsOf(phrase)).sort((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from);
    const kept: Mention[] = [];
    for (const mention of longestFirst) {
      if (kept.every((other) => mention.to <= other.from || mention.from >= other.to)) kept.push(mention);
    }
    return kept.sort((a, b) => a.from - b.from).map((mention) => mention.exercise);
  });
  return [...new Set(mentioned)];
}

/** A name as it can be typed: word by word as spelled, and reduced as for comparing. */
const spellings = (text: string): readonly [spelled: readonly string[], reduced: readonly string[]] => [spelledWords(text), wordsOf(text).map((word) => word.text)];
type Spellings = ReturnType<typeof spellings>;

const shelf = EXERCISES.map((exercise) => ({ exercise, name: spellings(exercise.name), others: exercise.otherNames.map(spellings) }));

/** How well one spelling of a name answers: 0 is the very name, 1 its beginning, 2 words of it, Infinity is no answer. */
function fit(words: readonly string[], typed: readonly string[]): number {
  const whole = words.join("");
  const query = typed.join("");
  if (whole === query) return 0;
  if (whole.startsWith(query)) return 1;
  return typed.every((part) => words.some((word) => word.startsWith(part))) ? 2 : Infinity;
}

const bestFit = (name: Spellings, typed: Spellings): number => Math.min(fit(name[0], typed[0]), fit(name[1], typed[1]));

/** The very name, the very other name, then names by fit, then other names by fit. Infinity is no answer. */
function rank(name: Spellings, others: readonly Spellings[], typed: Spellings): number {
  const own = bestFit(name, typed);
  const other = Math.min(...others.map((each) => bestFit(each, typed)));
  if (own === 0) return 0;
  if (other === 0) return 1;
  return own < Infinity ? own + 1 : other + 3;
}

/**
 * Answers for a picker, best first: the very name, names that begin so, names with those words, then other names likewise.
 * Equal answers stand by length of name, then alphabet. An empty query lists the catalogue in its own order.
 */
export function searchExercises(query: string, limit: number): Exercise[] {
  const typed = spellings(query);
  if (typed[0].length === 0) return EXERCISES.slice(0, limit);
  return shelf
    .map(({ exercise, name, others }) => ({ exercise, place: rank(name, others, typed) }))
    .filter((answer) => answer.place < Infinity)
    .sort((a, b) => a.place - b.place || a.exercise.name.length - b.exercise.name.length || (a.exercise.name < b.exercise.name ? -1 : 1))
    .slice(0, limit)
    .map((answer) => answer.exercise);
}
