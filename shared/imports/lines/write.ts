import { MAX_TEXT } from "../../episode";
import type { Span, Word } from "../types";

/** The words of a span as a line: as they were said, hesitations left out. */
export const saidIn = (words: readonly Word[], { from, to }: Span, skip: ReadonlySet<number>): string =>
  words.slice(from, to).filter((_, place) => !skip.has(from + place)).map(({ text }) => text).join(" ");

/** With a capital first and, for what is spoken, a full stop last. */
export function asSentence(text: string, stop: boolean): string {
  const capital = text.replace(/^(["'“‘(]*)(\p{Ll})/u, (_, open: string, letter: string) => open + letter.toUpperCase()).replace(/\bi(?=\b(?!\.))(?='|\s|$)/g, "I");
  return stop && !/[.!?…:;,]["'”’)]*$/.test(capital) ? `${capital}.` : capital;
}

/** A text in pieces no longer than a line may be, cut between words; a longer word is cut in itself. */
export function piecesOf(text: string, most = MAX_TEXT): string[] {
  const pieces: string[] = [];
  let rest = text;
  while (rest.length > most) {
    const blank = rest.lastIndexOf(" ", most);
    const end = blank > 0 ? blank : most;
    pieces.push(rest.slice(0, end));
    rest = rest.slice(end).trimStart();
  }
  return [...pieces, rest].filter((piece) => piece !== "");
}
