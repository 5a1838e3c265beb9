/** Text in one style, already split so that one font has all of it. `S` is whatever the measurer understands. */
export interface Styled<S> {
  readonly text: string;
  readonly style: S;
}

export interface Segment<S> extends Styled<S> {
  /** Offset from the left end of the line, and its own width. Points. */
  readonly x: number;
  readonly width: number;
}

export interface TextLine<S> {
  readonly segments: readonly Segment<S>[];
  readonly width: number;
  /** The line ended at a space, which is not drawn but must be read: "short they", not "shortthey". */
  readonly spaceAfter: boolean;
}

export type Measure<S> = (text: string, style: S) => number;

/** Spaces a line may end at; no-break spaces (U+00A0, U+202F, U+2007) hold words together. */
const SPACE = /([ \t\n\u1680\u2000-\u2006\u2008-\u200a\u205f\u3000]+)/;
const clusters = new Intl.Segmenter("en", { granularity: "grapheme" });

interface Word<S> {
  readonly parts: readonly Styled<S>[];
  /** Style of the space before it, null when none came before. */
  readonly space: S | null;
}

/** Words with their styles; a word may change style inside ("22" bold, "kg" not). */
function wordsOf<S>(runs: readonly Styled<S>[]): Word<S>[] {
  const words: Word<S>[] = [];
  let parts: Styled<S>[] = [];
  let space: S | null = null;
  const close = () => {
    if (parts.length > 0) words.push({ parts, space });
    parts = [];
  };
  for (const run of runs) {
    run.text.split(SPACE).forEach((bit, i) => {
      if (bit === "") return;
      if (i % 2 === 1) {
        close();
        space = words.length > 0 ? run.style : null;
      } else {
        parts.push({ text: bit, style: run.style });
      }
    });
    // A style change without a space goes on inside the same word.
  }
  close();
  return words;
}

/** Where a word that is too long may be cut first: after a hyphen, a slash or a dash between letters. */
const SOFT_CUT = /(?<=[\p{L})][-/–—])(?=[\p{L}(])/u;

/** The pieces a long word falls into: at its hyphens when `hard` is false, else at every character a reader sees. */
function cut<S>(parts: readonly Styled<S>[], hard: boolean): Styled<S>[] {
  return parts.flatMap(({ text, style }) =>
    (hard ? Array.from(clusters.segment(text), (s) => s.segment) : text.split(SOFT_CUT)).map((bit) => ({ text: bit, style })),
  );
}

/**
 * Breaks text into lines: greedy, at spaces; a word wider than the column is cut after its hyphens or slashes,
 * and where that does not help, between characters. Runs of spaces print as one; no other character is lost.
 *
 * @param width - points; a single character wider than this stands alone on its line
 * @param measure - width in points of a text in a style; called with whole words where possible
 */
export function wrap<S>(runs: readonly Styled<S>[], width: number, measure: Measure<S>): TextLine<S>[] {
  const room = width + 1e-6;
  const lines: TextLine<S>[] = [];
  let line: Segment<S>[] = [];
  let end = 0;

  const put = (text: string, style: S) => {
    const last = line.at(-1);
    if (last && last.style === style) {
      // Joined again, so that kerning and letters that combine are measured as they are drawn.
      const joined = last.text + text;
      line[line.length - 1] = { ...last, text: joined, width: measure(joined, style) };
    } else {
      line.push({ text, style, x: end, width: measure(text, style) });
    }
    const now = line.at(-1);
    end = now ? now.x + now.width : 0;
  };
  const flush = (spaceAfter: boolean) => {
    lines.push({ segments: line, width: end, spaceAfter });
    line = [];
    end = 0;
  };
  /** Puts all of it on the line, or nothing. */
  const fits = (parts: readonly Styled<S>[], space: S | null): boolean => {
    const before = { line: [...line], end };
    if (space !== null && line.length > 0) put(" ", space);
    for (const part of parts) put(part.text, part.style);
    if (end <= room) return true;
    line = before.line;
    end = before.end;
    return false;
  };

  const place = (parts: readonly Styled<S>[], space: S | null, hard: boolean): void => {
    if (fits(parts, space)) return;
    const alone = parts.reduce((sum, part) => sum + measure(part.text, part.style), 0) <= room;
    if (alone && line.length > 0) {
      flush(space !== null);
      if (fits(parts, null)) return;
    }
    const bits = cut(parts, hard);
    if (bits.length > parts.length) {
      bits.forEach((bit, i) => place([bit], i === 0 ? space : null, hard));
    } else if (!hard) {
      place(parts, space, true);
    } else {
      for (const [i, bit] of bits.entries()) {
        if (fits([bit], i === 0 ? space : null)) continue;
        if (line.length > 0) flush(i === 0 && space !== null);
        put(bit.text, bit.style);
      }
    }
  };

  for (const word of wordsOf(runs)) place(word.parts, word.space, false);
  if (line.length > 0) flush(false);
  return lines;
}
