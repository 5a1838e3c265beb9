import { sentencesOf, stretchesOf } from "./sentences";
import { spokenForm } from "./spoken-form";
import type { Pronunciation } from "./types";

/** A word alone, so that commas, quotes and capitals make no difference; a sign stays itself. */
const bare = (word: string): string => word.toLowerCase().replace(/[‘’ʼ]/g, "'").replace(/[^\p{L}\p{M}\p{N}'-]+/gu, "").replace(/^['-]+|['-]+$/g, "") || word;
/** Marks without a sound of their own stand in no word's way; "&" has one. */
const isHeard = (word: string): boolean => /[\p{L}\p{N}]/u.test(word) || /[\p{L}\p{N}]/u.test(spokenForm(word));
const heardWords = (text: string): string[] => text.split(/\s+/).filter((word) => word !== "" && isHeard(word));
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

const isSame = (a: readonly string[], b: readonly string[]): boolean => a.length === b.length && a.every((word, i) => word === b[i]);

/** Places behind which a part of the sentence may end: a comma, or a mark that is not heard. Counted in heard words. */
function partEnds(sentence: string): Set<number> {
  const ends = new Set<number>();
  let heard = 0;
  for (const word of sentence.split(/\s+/).filter(Boolean)) {
    if (isHeard(word)) heard += 1;
    if (!isHeard(word) || /[,;:…]$/.test(word)) ends.add(heard);
  }
  return ends;
}

/** A part is a piece of its own where what follows is said behind it just as it is said alone. */
function inParts({ written: [from, to], said: [heard, end] }: Stretch, words: readonly string[], said: readonly string[], ends: ReadonlySet<number>, pronunciations: readonly Pronunciation[]): Stretch[] {
  for (let at = from + 1; at < to; at += 1) {
    if (!ends.has(at)) continue;
    const rest = heardWords(spokenForm(words.slice(at, to).join(" "), pronunciations)).map(bare);
    const middle = end - rest.length;
    if (middle <= heard || middle >= end || !isSame(rest, said.slice(middle, end).map(bare))) continue;
    return [{ written: [from, at], said: [heard, middle] }, ...inParts({ written: [at, to], said: [middle, end] }, words, said, ends, pronunciations)];
  }
  return [{ written: [from, to], said: [heard, end] }];
}

function pairsOf(sentence: string, pronunciations: readonly Pronunciation[]): Pronunciation[] {
  const [written, said] = [heardWords(sentence), heardWords(spokenForm(sentence, pronunciations))];
  const ends = partEnds(sentence);
  const pieces = unlike(written.map(bare), said.map(bare)).filter((stretch) => !isOneSided(stretch)).flatMap((stretch) => inParts(stretch, written, said, ends, pronunciations));
  return pieces.map((piece) => ({ written: trimmed(written.slice(...piece.written)), said: trimmed(said.slice(...piece.said)) }));
}

/**
 * What is said otherwise than it is written, piece by piece and in order: { "3x8-10" , "three sets of eight to ten" }. Any piece can be
 * corrected by an entry of its `written` in the list of pronunciations.
 * @returns empty when every word is said as it stands
 */
export function saidDifferently(text: string, pronunciations: readonly Pronunciation[] = []): Pronunciation[] {
  return stretchesOf(text).flatMap(sentencesOf).flatMap((sentence) => pairsOf(sentence, pronunciations));
}
