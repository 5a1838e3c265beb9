import { sentencesOf, stretchesOf } from "./sentences";
import { spokenForm } from "./spoken-form";
import type { Pronunciation } from "./types";

const bare = (word: string): string => word.toLowerCase().replace(/[‘’ʼ]/g, "'").replace(/[^\p{L}\p{M}\p{N}'-]/gu, "");
const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => /[^\s/]/.test(word));

/** Lengths of the longest common runs of words from each pair of places on. */
function commonFrom(a: readonly string[], b: readonly string[]): Uint16Array[] {
  const table = Array.from({ length: a.length + 1 }, () => new Uint16Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i -= 1) {
    for (let j = b.length - 1; j >= 0; j -= 1) {
      const [row, below] = [table[i] as Uint16Array, table[i + 1] as Uint16Array];
      row[j] = a[i] === b[j] ? (below[j + 1] ?? 0) + 1 : Math.max(below[j] ?? 0, row[j + 1] ?? 0);
    }
  }
  return table;
}

function pairsOf(sentence: string, pronunciations: readonly Pronunciation[]): Pronunciation[] {
  const [written, said] = [wordsOf(sentence), wordsOf(spokenForm(sentence, pronunciations))];
  const [asWritten, asSaid] = [written.map(bare), said.map(bare)];
  const common = commonFrom(asWritten, asSaid);
  const pairs: { written: string[]; said: string[] }[] = [];
  let [i, j, open] = [0, 0, false];
  const differ = (from: string | undefined, to: string | undefined): void => {
    if (!open) pairs.push({ written: [], said: [] });
    open = true;
    if (from !== undefined) pairs.at(-1)?.written.push(from);
    if (to !== undefined) pairs.at(-1)?.said.push(to);
  };
  while (i < written.length || j < said.length) {
    if (i < written.length && j < said.length && asWritten[i] === asSaid[j]) [i, j, open] = [i + 1, j + 1, false];
    else if (j >= said.length || (i < written.length && (common[i + 1]?.[j] ?? 0) >= (common[i]?.[j + 1] ?? 0))) {
      differ(written[i], undefined);
      i += 1;
    } else {
      differ(undefined, said[j]);
      j += 1;
    }
  }
  const tidy = (words: readonly string[]): string => words.join(" ").replace(/[.,;:!?…]+$/, "");
  return pairs.map((pair) => ({ written: tidy(pair.written), said: tidy(pair.said) })).filter((pair) => bare(pair.written) !== bare(pair.said));
}

/**
 * What is said otherwise than it is written, piece by piece and in order: { "3x8-10" , "three sets of eight to ten" }. Any piece can be
 * corrected by an entry of its `written` in the list of pronunciations.
 */
export function saidDifferently(text: string, pronunciations: readonly Pronunciation[] = []): Pronunciation[] {
  return stretchesOf(text).flatMap(sentencesOf).flatMap((sentence) => pairsOf(sentence, pronunciations));
}
