import winkNLP, { type WinkMethods } from "wink-nlp";
import model from "wink-eng-lite-web-model";
import type { Word } from "../types";

/** Read at once; the library's answer for a word depends on its neighbours only. */
const CHUNK = 400;

let language: WinkMethods | null = null;

/**
 * The part of speech of each word, as the Universal Dependencies name it ("NOUN", "VERB", "AUX"); "X" for a sign.
 * A contraction has the class of its first part: "don't" is AUX, "it's" PRON.
 */
export function wordClasses(words: readonly Word[]): string[] {
  // Loading the model takes a tenth of a second, so it waits for the first text.
  language ??= winkNLP(model, ["pos"]);
  const { its } = language;
  const classes: string[] = [];
  for (let from = 0; from < words.length; from += CHUNK) {
    const part = words.slice(from, from + CHUNK).map(({ plain }) => plain);
    const text = part.join(" ");
    const pieces = language.readDoc(text).tokens();
    const values = pieces.out();
    const tags = pieces.out(its.pos);
    let piece = 0;
    let at = 0;
    let start = 0;
    for (const word of part) {
      // The piece that holds the word's first character.
      for (let value = values[piece]; value !== undefined; value = values[piece]) {
        const found = text.indexOf(value, at);
        if (found < 0 || found + value.length > start) break;
        at = found + value.length;
        piece += 1;
      }
      classes.push(word === "" ? "X" : (tags[piece] ?? "X"));
      start += word.length + 1;
    }
  }
  return classes;
}
