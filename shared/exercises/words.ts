/** Short forms, misspellings and spoken forms of single words; both sides of a comparison pass through here. */
const SAME_WORD: Readonly<Record<string, string>> = {
  db: "dumbbell", dumbell: "dumbbell", dumbel: "dumbbell", dumbbel: "dumbbell",
  bb: "barbell", barbel: "barbell", kb: "kettlebell", kettelbell: "kettlebell", kettlebel: "kettlebell",
  one: "single", "1": "single", sl: "single leg", legged: "leg", armed: "arm", sa: "single arm",
  calve: "calf", flye: "fly", flie: "fly", ohp: "overhead press", ext: "extension", bw: "bodyweight",
  delt: "deltoid", scap: "scapular", stetch: "stretch", streach: "stretch", romainian: "romanian", excercise: "exercise",
};

/** Plural to singular, well enough for the names of exercises and of body parts. */
function singular(word: string): string {
  if (word.length <= 2) return word;
  if (/(?:ss|us)$/.test(word)) return word;
  if (word === "calves") return "calf";
  if (/[^aeiou]ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(?:ss|sh|ch|x)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
}

/** One word of a text, reduced; `marked` says its spelling shows a noun: a plural, or glued to the word before by a hyphen. */
export interface Word {
  readonly text: string;
  readonly marked: boolean;
}

/** Lower case, no accents, no apostrophes, one kind of hyphen. */
const plainOf = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").replace(/['’‘`´]/g, "").replace(/[‐‑‒–]/g, "-").toLowerCase();

/** The words as they are spelled, for what is still being typed. */
export const spelledWords = (text: string): string[] => plainOf(text).match(/[a-z0-9]+/g) ?? [];

/**
 * A text as plain words: lower case, no accents, no apostrophes, hyphens opened, plurals and short forms resolved.
 * "Farmer's carries" and "farmers carry" give the same words. Punctuation is dropped; see `phrases`.
 */
export function wordsOf(text: string): Word[] {
  const plain = plainOf(text);
  return [...plain.matchAll(/[a-z0-9]+/g)].flatMap((found) => {
    const one = singular(found[0]);
    const glued = plain[found.index - 1] === "-" && /[a-z0-9]/.test(plain[found.index - 2] ?? "");
    const marked = glued || one !== found[0];
    return (SAME_WORD[one] ?? one).split(" ").map((part) => ({ text: part, marked }));
  });
}

/** A text cut where a speaker would pause; names never reach across a cut. */
export const phrases = (text: string): string[] => text.split(/[,.;:!?()[\]/\n]|\s[-–—]+\s/).filter((part) => /\w/.test(part));

/** What two spellings of one name share: "push-ups", "Push up" and "pushup" give one key. */
export const keyOf = (text: string): string => wordsOf(text).map((word) => word.text).join("");
