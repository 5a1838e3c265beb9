import { sensesOf } from "./senses";

/** Words that say nothing about what a line is about. */
const COMMON = new Set("a an the and or but of to in on at for with it is are be you your i my we our that this as so if do not don't it's".split(" "));
/** A shared word says more than a shared sense. */
const WORD = 2;

/** Words and senses of a line, each with what it is worth. */
function marksOf(line: string): ReadonlyMap<string, number> {
  const words = line.toLowerCase().replaceAll("’", "'").match(/[a-z0-9]+(?:'[a-z]+)?/g) ?? [];
  const marks = new Map<string, number>();
  for (const word of words) if (!COMMON.has(word)) marks.set(word, WORD);
  for (const senses of sensesOf(words.map((word) => ({ word, lemma: word })))) for (const sense of senses) marks.set(sense, 1);
  return marks;
}

const size = (marks: ReadonlyMap<string, number>): number => Math.sqrt([...marks.values()].reduce((sum, worth) => sum + worth * worth, 0));

/** Lines with their marks, ready to be compared with. */
export type Shelf = readonly { readonly line: string; readonly marks: ReadonlyMap<string, number>; readonly size: number }[];

export const shelved = (lines: readonly string[]): Shelf =>
  lines.map((line) => {
    const marks = marksOf(line);
    return { line, marks, size: size(marks) };
  });

/** The lines of a shelf most like a text, nearest first: cosine of shared words and senses. */
export function nearest(text: string, shelf: Shelf, most: number): string[] {
  const [own] = shelved([text]);
  if (!own) return [];
  const near = shelf.map(({ line, marks, size: length }) => {
    let shared = 0;
    for (const [mark, worth] of own.marks) if (marks.has(mark)) shared += worth * worth;
    return { line, near: shared === 0 ? 0 : shared / (own.size * length) };
  });
  return near.sort((a, b) => b.near - a.near).slice(0, most).map(({ line }) => line);
}
