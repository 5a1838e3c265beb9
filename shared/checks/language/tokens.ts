import winkNLP, { type ItsFunction, type WinkMethods } from "wink-nlp";
import model from "wink-eng-lite-web-model";

/** What stands between a word and the one before it: nothing or a hyphen, a comma or dash, a colon or semicolon, the end of a sentence. */
export const BREAK = { none: 0, comma: 1, colon: 2, sentence: 3 } as const;

export interface Token {
  /** As typed, in lower case with plain apostrophes. */
  readonly word: string;
  readonly lemma: string;
  /** Part of speech, as the Universal Dependencies name it. */
  readonly pos: string;
  readonly start: number;
  readonly end: number;
  /** One of BREAK. */
  readonly gap: number;
  /** Between double quotes. */
  readonly quoted: boolean;
}

const LOOKALIKES: Readonly<Record<string, string>> = { "’": "'", "‘": "'", "“": '"', "”": '"', "–": "-", "—": ",", "…": "." };
const CHANGES = /[^a-z0-9 .,'"!?;:-]/g;

/** Lower case with plain quotes and dashes, character for character, so that places in it are places in the text. */
export function normalise(text: string): string {
  return text.replace(CHANGES, (char) => {
    const low = LOOKALIKES[char] ?? char.toLowerCase();
    return low.length === 1 ? low : char;
  });
}

/** "Ad:" keeps its colon, for with it the word is a label. */
const WORD = /\bad:|[a-z0-9%\u00c0-\u024f]+(?:'[a-z]+)*/g;

function breakOf(between: string): number {
  if (between === " " || between === "") return BREAK.none;
  if (/[.!?](?:["'\s)]|$)|\n/.test(between)) return BREAK.sentence;
  if (/[;:]/.test(between)) return BREAK.colon;
  return /,|\s-+\s|[()]/.test(between) ? BREAK.comma : BREAK.none;
}

let language: WinkMethods | null = null;

/**
 * The words of a normalised text with lemma and part of speech.
 *
 * Sentence ends are taken from the punctuation: the language library reads "knees cave in." as an abbreviation of inches.
 */
export function tokenise(text: string): Token[] {
  // Loading the model takes a tenth of a second, so it waits for the first text.
  language ??= winkNLP(model, ["pos"]);
  const { its } = language;
  const pieces = language.readDoc(text).tokens();
  const values = pieces.out();
  // The library's own types give this one fewer arguments than it takes.
  const lemmas = pieces.out(its.lemma as ItsFunction<string>);
  const tags = pieces.out(its.pos);
  const tokens: Token[] = [];
  let piece = 0;
  let at = 0;
  let previous = 0;
  let quoted = false;
  for (const match of text.matchAll(WORD)) {
    const [word] = match;
    const start = match.index;
    // The piece that holds this word's first character; contractions come in two pieces, the first one counts.
    for (let value = values[piece]; value !== undefined; value = values[piece]) {
      const from = text.indexOf(value, at);
      if (from < 0 || from + value.length > start) break;
      at = from + value.length;
      piece += 1;
    }
    const between = text.slice(previous, start);
    for (const char of between) if (char === '"') quoted = !quoted;
    if (quoted && /^[,.!?]?'/.test(between)) quoted = false;
    else if (/(?:^|[\s,:])'$/.test(between) && !/^(?:em|til|cause|bout)\b/.test(text.slice(start)) && /'(?=[\s.,!?]|$)/.test(text.slice(start))) quoted = true;
    const value = values[piece] ?? "";
    const whole = value === word;
    tokens.push({ word, lemma: whole ? lemmas[piece] ?? word : word, pos: tags[piece] ?? "X", start, end: start + word.length, gap: breakOf(between), quoted });
    previous = start + word.length;
  }
  return tokens;
}
