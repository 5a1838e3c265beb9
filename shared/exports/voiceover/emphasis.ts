/** A word of a say line and whether the coach leans on it. */
export interface WeighedWord {
  readonly text: string;
  readonly strong: boolean;
}

/** Words between stars, as in *slowly* or *not today*; a star with spaces round it is a sign of its own. */
const STRESSED = /(?<![\p{L}\p{N}*])\*(?=[^\s*])([^*]*[^\s*])\*(?![\p{L}\p{N}*])/gu;

/** The words of a text in order, stars taken off; breath marks stay words. */
export function weighedWords(text: string): WeighedWord[] {
  const words: WeighedWord[] = [];
  let at = 0;
  const add = (part: string, strong: boolean): void => {
    const bits = part.split(/\s+/).filter(Boolean);
    // "*slow*," is one word: what touches the star belongs to it.
    const last = words.at(-1);
    const touches = last !== undefined && bits.length > 0 && !/^\s/.test(part) && !/\s$/.test(text.slice(0, at) || " ");
    bits.forEach((bit, i) => {
      if (i === 0 && touches && last) words[words.length - 1] = { text: last.text + bit, strong: last.strong || strong };
      else words.push({ text: bit, strong });
    });
  };
  for (const match of text.matchAll(STRESSED)) {
    add(text.slice(at, match.index), false);
    at = match.index;
    add(match[1] ?? "", true);
    at = match.index + match[0].length;
  }
  add(text.slice(at), false);
  return words;
}

/** The text without its stars. */
export const withoutStars = (text: string): string => text.replace(STRESSED, "$1");
