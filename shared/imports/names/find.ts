import type { Span, Word } from "../types";
import { LONGEST_NAME, NAME_WORDS, NAMES, nameWord, singular, type Name } from "./lexicon";
import { likeness, soundOf } from "./sound";

/** An exercise's name found in the words. */
export interface Mention extends Span {
  readonly name: Name;
  /** 1 for the very name; less where it was misheard or misspelled. */
  readonly sure: number;
  /** A plural, a number or an article says that a thing is meant, not something to do. */
  readonly isThing: boolean;
}

/** Words that only join; a misheard name neither begins nor ends with one, and holds none that its name lacks. */
export const JOINING = new Set(
  ("a an the and or but so then than that this these those to of in on at for from with by as is are was were be been being am do does did done it its he she they we you i me my your our their his her us them "
  + "if when while just let lets not no yes now up down out off over into onto through there here what which who how why can could will should must may might have has had get got go going gonna want like all some any more most much very too also "
  + "again still only really okay ok right well want's it's that's there's we're you're i'm they're we'll you'll i'll we've you've i've let's don't first second third next last one two three four five six seven eight nine ten").split(" "),
);

const byLetters = new Map<string, Name>();
for (const name of NAMES) if (!byLetters.has(name.letters)) byLetters.set(name.letters, name);

/** Names by their length in sounds and the family of their first consonant, which is rarely misheard for one of another family. */
const FAMILIES = ["bp", "dtT", "gkh", "fvw", "szSCj", "mn", "lr"];
const familyOf = (sound: string): number => {
  const first = /[^aeiou]/.exec(sound)?.[0] ?? "";
  return FAMILIES.findIndex((family) => first !== "" && family.includes(first));
};
const bucketOf = (length: number, family: number): number => length * 10 + family + 1;
const bySound = new Map<number, Name[]>();
/** Names with words such as "on a" are whole phrases; only their very words are them. */
const PHRASE = /\b(?:on|it|its|a|the|with|to|and|of|from|in|your|you)\b/;
for (const name of NAMES.filter(({ words }) => !PHRASE.test(words.join(" ")))) {
  const bucket = bucketOf(name.sound.length, familyOf(name.sound));
  bySound.set(bucket, [...(bySound.get(bucket) ?? []), name]);
}

const LONGEST_MISHEARD = 6;

/** How alike a misheard name must sound; short names are confused too easily. */
const leastFor = (length: number): number => (length >= 9 ? 0.83 : length >= 7 ? 0.86 : length >= 5 ? 0.92 : 1);

/** Sounds that a misheard name may have more or fewer. */
const MOST_MISSING = 2;

interface Likely {
  readonly name: Name;
  readonly sure: number;
}

function soundsLike(sound: string): Likely | null {
  const least = leastFor(sound.length);
  let best: Likely | null = null;
  const family = familyOf(sound);
  const reach = Math.min(MOST_MISSING, Math.ceil(sound.length * (1 - least) * 2));
  for (let length = sound.length - reach; length <= sound.length + reach; length += 1) {
    for (const name of bySound.get(bucketOf(length, family)) ?? []) {
      const sure = likeness(sound, name.sound, Math.max(least, best?.sure ?? 0));
      if (sure >= leastFor(Math.min(length, sound.length)) && sure > (best?.sure ?? 0)) best = { name, sure };
    }
  }
  return best;
}

/** A misheard name is short, and holds no word that only joins unless names hold it too or begin with it. */
const mayBeName = (parts: readonly string[]): boolean =>
  parts.length <= LONGEST_MISHEARD && (!JOINING.has(parts.at(-1) ?? "") || /^(?:up|down|out|over|through)$/.test(parts.at(-1) ?? "")) && parts.every((part, at) => !JOINING.has(part) || NAME_WORDS.has(part) || (at === 0 && part.length > 1) || (at > 0 && at < parts.length - 1 && parts.length >= 3));

const remembered = new Map<string, Likely | null>();

/** The name some letters are, or sound like. */
function lookUp(parts: readonly string[]): Likely | null {
  const letters = parts.join("");
  const exact = byLetters.get(letters) ?? byLetters.get(singular(letters));
  if (exact) return { name: exact, sure: 1 };
  if (!mayBeName(parts)) return null;
  const sound = parts.map(soundOf).join("");
  const known = remembered.get(sound);
  if (known !== undefined) return known;
  const found = soundsLike(sound);
  if (remembered.size > 50_000) remembered.clear();
  remembered.set(sound, found);
  return found && { ...found, sure: Math.min(found.sure, 0.98) };
}

/** A misheard name may not be made of joining words, nor hide a word that is plainly another. */
function isLikely(parts: readonly string[], { name, sure }: Likely, plural: boolean): boolean {
  if (sure === 1) return true;
  if (name.everyday && parts.length > 1 && sure < (plural ? 0.93 : 0.97)) return false;
  // "Incline dumbbells" is short for something, and no incline dumbbell row misheard.
  if (parts.length < name.words.length && parts.every((part, at) => part === name.words[at])) return false;
  if (name.letters.length < 5 || (name.exercise === null && sure < 0.93)) return false;
  // Word by word, none may be another word altogether: "alternating big step" is no alternating dead bug.
  if (parts.length === name.words.length && parts.some((part, at) => likeness(soundOf(part), soundOf(name.words[at] ?? ""), 0) < 0.5)) return false;
  const inner = sure >= 0.93 && name.words.length >= 3;
  return parts.every((part, at) => !JOINING.has(part) || name.words.includes(part) || (inner && at > 0 && at < parts.length - 1) || (part.length > 2 ? name.letters.includes(part) || name.letters.includes(part.replace(/(.)\1/, "$1")) : part.length > 1 && (name.letters.startsWith(part) || name.sound.startsWith(soundOf(part))))) && parts.some((part) => !JOINING.has(part));
}

const ARTICLES = new Set(["a", "an", "the", "this", "your", "our", "my", "these", "those", "some", "of", "each", "every", "first", "next", "last", "second", "third", "is", "with", "into", "for", "heavy", "light", "doing", "do", "weighted", "bodyweight", "easy", "slow", "set", "onto"]);
const NUMBER = /^(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|few|couple|more)$/;

/** A word as the parts of a name: "push-ups" is two. */
const partsOf = (plain: string): string[] => plain.replace(/'/g, "").split(/[^a-z0-9]+/).filter((part) => part !== "").map(nameWord);

/** "Eight clean reps" tells how, and "sixty seconds rest, curl" what to do: no exercise is named. */
const COUNTS = /^(?:reps?|repetitions?|ones?|sets?)$/;
const TIMES = /^(?:seconds?|secs?|minutes?|mins?|minute's|\d+|sets?)$/;

/** Words of a scheme; a misheard name holds none. */
const UNITS = /^(?:kilos?|kgs?|kg|pounds?|lbs?|reps?|repetitions?|seconds?|minutes?|sets?|rounds?|percent|met(?:er|re)s?)$/;

/** Places and things first, exercises only where something is counted or introduced. */
const PLACES = /^(?:bench|bridge|goblet|walk|walking|bike|bicycle|cycling|rower|rowing|halo|pointer|wall walk|breathing)$/;
const OWNING = new Set(["a", "an", "the", "this", "your", "our", "my", "of", "each", "every", "onto", "into", "with", "set", "is"]);

const isPlural = (plain: string): boolean => /s$/.test(plain) && !/(?:ss|'s)$/.test(plain) && nameWord(plain) !== plain.replace(/[^a-z0-9]/g, "");

function meansThing(words: readonly Word[], from: number, to: number, name: Name): boolean {
  const last = words[to - 1]?.plain ?? "";
  const before = words[from - 1];
  if (COUNTS.test(words[to]?.plain ?? "") && !isPlural(last)) return false;
  const glued = words.slice(from, to).some(({ plain }) => plain.includes("-")) || (to - from === 1 && /(?:up|down|out)s?$/.test(last) && last.length > 5);
  const plural = isPlural(last);
  const alone = (before === undefined || /[.!?,:;]$/.test(before.text)) && (words[to] === undefined || /[.!?,:;]$/.test(words[to - 1]?.text ?? ""));
  // "squatting", "lunging" are not looked for, so a following object is the only sign of a verb left: "squat the weight", "curl your toes"
  const governs = /^(?:your|the|it|them|that|this|through|down|up|back|in|into|towards?|over|on|onto|off|as|and)$/.test(words[to]?.plain ?? "");
  return glued || plural || alone || NUMBER.test(before?.plain ?? "") || (ARTICLES.has(before?.plain ?? "") && !governs && !(OWNING.has(before?.plain ?? "") && PLACES.test(name.words.join(" "))));
}

/** So many of the latest finds may end at the word before. */
const NEAR = 40;

const CLOSES = /[.!?;:]["')\]]*$/;

/**
 * The names of exercises in the words, in order, none overlapping; longer and surer names win.
 * @param skip - words that are hesitations or sounds; a name may reach over them
 */
export function namesIn(words: readonly Word[], skip: ReadonlySet<number>): Mention[] {
  const found: Mention[] = [];
  for (let from = 0; from < words.length; from += 1) {
    if (skip.has(from) || words[from]?.plain === "") continue;
    // "Last one, farmer's carries": a number begins a name only where the very name has it.
    const counted = /^(?:one|1|first|single)$/.test(words[from]?.plain ?? "");
    const isRest = /^(?:rest|break|off|hold|set|sets)$/.test(words[from]?.plain ?? "") && TIMES.test(words[from - 1]?.plain ?? "");
    const parts: string[] = [];
    let unit = false;
    for (let to = from; to < words.length && parts.length < LONGEST_NAME; to += 1) {
      const word = words[to] as Word;
      if (to > from && (word.pause > 1.5 || word.edge === "paragraph")) break;
      if (skip.has(to)) continue;
      parts.push(...partsOf(word.plain));
      unit ||= UNITS.test(word.plain);
      // "Goblet squats, hold it": a plural that is a name itself ends there, and "squat hold" is another exercise.
      const previous = words[to - 1];
      if (to > from && previous && isPlural(previous.plain) && (byLetters.has(nameWord(previous.plain)) || found.slice(-NEAR).some((other) => other.to === to && other.from <= from)) && !/'s$/.test(previous.plain)) break;
      const likely = parts.length <= LONGEST_NAME ? lookUp(parts) : null;
      if (likely && isLikely(parts, likely, isPlural(word.plain)) && !((isRest || unit) && likely.sure < 1) && !(counted && likely.sure < 0.97)) found.push({ from, to: to + 1, ...likely, isThing: !likely.name.everyday || meansThing(words, from, to + 1, likely.name) });
      if (CLOSES.test(word.text)) break;
    }
  }
  // "Time romanian deadlifts": where the very name of one exercise ends a misheard other, the words before must sound like the rest.
  const exact = new Map(found.filter(({ sure }) => sure === 1).reverse().map((mention) => [mention.to, mention]));
  const likely = found.filter(({ sure, from, to, name }) => {
    const inner = exact.get(to);
    if (sure === 1 || !inner || inner.from <= from) return true;
    if (!name.sound.endsWith(inner.name.sound)) return false;
    const before = words.slice(from, inner.from).flatMap(({ plain }) => partsOf(plain)).map(soundOf).join("");
    return likeness(before, name.sound.slice(0, -inner.name.sound.length), 0.5) >= 0.6;
  });
  const size = ({ name, sure, from, to }: Mention): number => name.letters.length * (sure === 1 ? 1 : sure - 0.08) - (to - from) * 0.01;
  const kept: Mention[] = [];
  const taken = new Set<number>();
  for (const mention of likely.sort((a, b) => size(b) - size(a) || a.from - b.from)) {
    const places = Array.from({ length: mention.to - mention.from }, (_, at) => mention.from + at);
    if (places.some((place) => taken.has(place))) continue;
    kept.push(mention);
    for (const place of places) taken.add(place);
  }
  return kept.sort((a, b) => a.from - b.from);
}
