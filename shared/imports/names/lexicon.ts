import { EXERCISES, findExercise, type Exercise } from "../../exercises";
import { ALSO_SAID } from "./also";
import { BEYOND } from "./beyond";
import { soundOf } from "./sound";

/** One name of an exercise, ready to be looked for in speech. */
export interface Name {
  /** As a heading: the catalogue's own name, or the name as coaches say it. */
  readonly title: string;
  readonly exercise: Exercise | null;
  /** Singular, lower case, hyphens opened. */
  readonly words: readonly string[];
  readonly letters: string;
  readonly sound: string;
  /** Also said about ordinary things: "push up", "a bridge", "walk". Counts only where speech treats it as a thing. */
  readonly everyday: boolean;
}

const SHORT: Readonly<Record<string, string>> = { db: "dumbbell", kb: "kettlebell", bb: "barbell", legged: "leg", armed: "arm", one: "single", "1": "single", bicep: "biceps", tricep: "triceps", calves: "calf", rose: "row", roes: "row", would: "wood", flye: "fly", travelling: "walking" };

/** Plural to singular; short words, and words such as press and biceps, stay. */
export function singular(word: string): string {
  if (word.length <= 2 || /(?:ss|us|ceps)$/.test(word)) return word;
  if (/[^aeiou]ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(?:ss|sh|ch|x)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
}

/** A word as names are compared: no apostrophe, no accent, singular, short forms spelled out. */
export function nameWord(plain: string): string {
  const letters = plain.normalize("NFKD").replace(/[^a-z0-9]/g, "");
  const own = SHORT[letters] ?? singular(letters);
  return SHORT[own] ?? own;
}

const wordsOf = (name: string): string[] => name.toLowerCase().replace(/['’]/g, "").split(/[^a-z0-9]+/).filter((part) => part !== "").map(nameWord);

/** Verbs, places and things that share their word with an exercise. */
const EVERYDAY = new RegExp(String.raw`^(?:${[
  String.raw`bench|breathing|slow breath|bridge|crunch|curl|dip|goblet|lunge|pointer|squat|halo|windmill|shrug|skipping|bike|bicycle`,
  String.raw`cycling|walk|walking|rower|rowing|rollout|figure eight|walkout|pulldown|child position|open book|good morning|hip hinge`,
  String.raw`front raise|band pull|plank hold|step forward lunge|pogo|wall walk|get up|around the world|overhead extension`,
  String.raw`(?:bar|wall|stick|dowel|hip) hinge|hinge row|bar (?:hang|dip|pull)|grip hang|table row|chair (?:hold|stand)|free squat`,
  String.raw`side stretch|leg lift|superman|toe touch|forward fold|swing|clean|slam|bulgarian|romanian|farmer|lateral|rear delt`,
  String.raw`climber|deep breath|belly breath|\w+ (?:up|down|out|through)`,
].join("|")})$`);

function nameOf(name: string, title: string, exercise: Exercise | null): Name {
  const words = wordsOf(name);
  return { title, exercise, words, letters: words.join(""), sound: words.map(soundOf).join(""), everyday: EVERYDAY.test(words.join(" ")) };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Every name, the catalogue's first. */
export const NAMES: readonly Name[] = [
  ...EXERCISES.flatMap((exercise) => [exercise.name, ...exercise.otherNames, ...(ALSO_SAID[exercise.id] ?? []).filter((name) => findExercise(name) === null)].map((name) => nameOf(name, exercise.name, exercise))),
  ...BEYOND.filter((name) => findExercise(name) === null).map((name) => nameOf(name, capital(name), null)),
];

/** The most words a name has, as speech may part them ("kettle bell", "pull down"). */
export const LONGEST_NAME = Math.max(...NAMES.map(({ words }) => words.length)) + 2;

/** Words of names, none of which is a word that only joins. */
export const NAME_WORDS: ReadonlySet<string> = new Set(NAMES.flatMap(({ words }) => words));

/** A name of an exercise of the catalogue. */
export const nameById = (id: string): Name | null => NAMES.find(({ exercise }) => exercise?.id === id) ?? null;

/** What an exercise is known by, in the catalogue or not: its id, or the words of its name in quotes. */
export const keyOf = ({ exercise, words }: Pick<Name, "exercise" | "words">): string => exercise?.id ?? `"${words.join(" ")}"`;

/** The key of an exercise by its id or by its title in quotes, whichever way the title is written. */
export function keyOfTitle(title: string): string {
  if (!title.startsWith('"')) return title;
  const words = wordsOf(title.slice(1, -1));
  return keyOf(NAMES.find((name) => name.words.join(" ") === words.join(" ")) ?? { exercise: null, words });
}

/** The name of a key; one that no name has is spelled as its words. */
export function nameByKey(key: string): Name | null {
  if (!key.startsWith('"')) return nameById(key);
  const words = key.slice(1, -1);
  return NAMES.find((name) => keyOf(name) === key) ?? nameOf(words, capital(words), null);
}
