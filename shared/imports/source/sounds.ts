import type { Word } from "../types";

/** Sounds that captions describe: "[Music]", "(applause)", "♪ la la ♪", "*laughs*". Brackets of more than six words are speech. */
const LONGEST = 6;
const PAIRS: Readonly<Record<string, RegExp>> = { "[": /\][.,!?]*$/, "(": /\)[.,!?]*$/, "♪": /♪$/, "*": /\*$/ };

/** The places of words that are described sounds and not speech. `(3 sets)` and times in brackets are no sounds. */
export function soundsIn(words: readonly Word[]): Set<number> {
  const sounds = new Set<number>();
  for (let at = 0; at < words.length; at += 1) {
    const open = words[at]?.text.charAt(0) ?? "";
    const close = PAIRS[open];
    if (!close) continue;
    const end = words.slice(at, at + LONGEST).findIndex((word, place) => close.test(word.text) && (place > 0 || word.text.length > 1));
    if (end < 0) continue;
    const inside = words.slice(at, at + end + 1);
    const isSound = open === "[" || open === "♪" || (end < 3 && inside.every(({ plain }) => /^(?:music|applause|laugh\w*|cheer\w*|sigh\w*|cough\w*|breath\w*|exhal\w*|inhal\w*|grunt\w*|clap\w*|beep\w*|playing|inaudible|crosstalk|noise|clang\w*|bang\w*)?$/.test(plain)));
    if (!isSound || inside.some(({ plain }) => /\d/.test(plain))) continue;
    inside.forEach((_, place) => sounds.add(at + place));
    at += end;
  }
  return sounds;
}
