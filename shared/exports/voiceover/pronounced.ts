import { spokenForm, type Pace } from "../../speech";
import { withoutStars } from "./emphasis";

/** Words that are not said as they are written: "3x8 @ 20 kg" is said "three sets of eight at twenty kilos". */
export interface Pronounced {
  readonly written: string;
  readonly said: string;
}

/** A word alone, so that commas and capitals make no difference. */
const bare = (word: string): string => word.toLowerCase().replace(/[‘’ʼ]/g, "'").replace(/[^\p{L}\p{M}\p{N}'-]+/gu, "").replace(/^['-]+|['-]+$/g, "");
/** Breath marks and signs without a sound of their own stand in no word's way. */
const isHeard = (word: string): boolean => bare(word) !== "";
const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => word !== "" && word !== "/");
const trimmed = (words: readonly string[]): string => words.join(" ").replace(/[.,;:!?…]+$/, "");

/** Longest common run of words, written against said, as pairs of places. */
function common(a: readonly string[], b: readonly string[]): (readonly [number, number])[] {
  const lengths = Array.from({ length: a.length + 1 }, () => new Uint16Array(b.length + 1));
  const at = (i: number, j: number): number => lengths[i]?.[j] ?? 0;
  for (let i = a.length - 1; i >= 0; i -= 1) {
    for (let j = b.length - 1; j >= 0; j -= 1) {
      const row = lengths[i];
      if (row) row[j] = a[i] === b[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const pairs: (readonly [number, number])[] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    if (a[i] === b[j]) pairs.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i += 1;
    else j += 1;
  }
  return pairs;
}

interface Stretch {
  readonly written: readonly [number, number];
  readonly said: readonly [number, number];
}

/** What lies between the words both share. */
function between(pairs: readonly (readonly [number, number])[], ends: readonly [number, number]): Stretch[] {
  const found: Stretch[] = [];
  let [from, heard] = [0, 0];
  for (const [i, j] of [...pairs, ends]) {
    if (i > from || j > heard) found.push({ written: [from, i], said: [heard, j] });
    [from, heard] = [i + 1, j + 1];
  }
  return found;
}

const isOneSided = ({ written, said }: Stretch): boolean => written[0] === written[1] || said[0] === said[1];

/** Shared words can be paired from the front or from the back; the way that leaves fewer words without a partner is right. */
function unlike(a: readonly string[], b: readonly string[]): Stretch[] {
  const ends = [a.length, b.length] as const;
  const front = between(common(a, b), ends);
  if (!front.some(isOneSided)) return front;
  const turned = common([...a].reverse(), [...b].reverse()).map(([i, j]) => [a.length - 1 - i, b.length - 1 - j] as const).reverse();
  const back = between(turned, ends);
  return back.filter(isOneSided).length < front.filter(isOneSided).length ? back : front;
}

/**
 * The stretches of a text that are said otherwise than written, in order, each with the words around it left out.
 * @returns empty when every word is said as it stands
 */
export function pronounced(text: string, pronunciations: Pace["pronunciations"]): Pronounced[] {
  const plain = withoutStars(text);
  const written = wordsOf(plain);
  const heard = written.flatMap((word, at) => (isHeard(word) ? [at] : []));
  const said = wordsOf(spokenForm(plain, pronunciations)).filter(isHeard);
  return unlike(heard.map((at) => bare(written[at] ?? "")), said.map(bare)).filter((stretch) => !isOneSided(stretch)).map((stretch) => ({
    written: trimmed(written.slice(heard[stretch.written[0]], (heard[stretch.written[1] - 1] ?? 0) + 1)),
    said: trimmed(said.slice(...stretch.said)),
  }));
}
