/** Characters of a text, end not included. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

/** The range cut to what the text has. */
export function rangeIn(text: string, range: Range): Range {
  const start = Math.max(0, Math.min(range.start, text.length));
  return { start, end: Math.max(start, Math.min(range.end, text.length)) };
}

/** Where `match` stands, for a match of a regular expression. */
export function rangeOf(match: RegExpExecArray): Range {
  return { start: match.index, end: match.index + match[0].length };
}

/** Do two ranges share a character? */
export function overlap(a: Range, b: Range): boolean {
  return a.start < b.end && b.start < a.end;
}
