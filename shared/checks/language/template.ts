import { CLASSES } from "./lexicon";

/**
 * Templates: a small, readable way to write "these words, with a little room between".
 *
 *   let|allow your? <back> ~2 round+
 *
 * `a|b` is a choice, `?` makes a word optional, `<name>` is a word class of lexicon.ts, `~3` is up to three words of the
 * same clause, `~,3` may cross commas, `~.3` whole sentences. A word ending in `+` is a regular verb in all its forms, in `%` a noun with or
 * without s, in `*` anything that starts so; `_` stands for a blank inside a phrase.
 */
const BLANK = "[\\s\"'-]+";
const INSIDE = "[\\s\"'-]+";
const ACROSS = "[\\s,\"'-]+";
const BEYOND = "[\\s,;:.!?\"'-]+";
const WORD = "[a-z0-9%']+";

const VOWEL_GROUPS = /[aeiouy]+/g;

/** Regular forms: round, rounds, rounded, rounding; collapse, collapsing; sag, sagging; carry, carried. */
function verbForms(stem: string): string {
  if (/[^aeiou]y$/.test(stem)) return `${stem.slice(0, -1)}(?:y|ies|ied|ying)`;
  if (/e$/.test(stem)) return `${stem.slice(0, -1)}(?:e|es|ed|ing)`;
  const doubles = /[^aeiou][aeiou][^aeiouwxy]$/.test(` ${stem}`) && (stem.match(VOWEL_GROUPS) ?? []).length === 1;
  const last = stem.slice(-1);
  if (doubles) return `${stem}(?:s|${last}ed|${last}ing)?`;
  return /(?:s|x|z|ch|sh)$/.test(stem) ? `${stem}(?:es|ed|ing)?` : `${stem}(?:s|ed|ing)?`;
}

function wordSource(word: string): string {
  if (word.startsWith("<")) {
    const words = CLASSES[word.slice(1, -1)];
    if (!words) throw new Error(`template: there is no word class ${word}`);
    return choice(words);
  }
  const plain = (text: string): string => text.replace(/[.$^{}()[\]\\/]/g, "\\$&").replace(/_/g, BLANK);
  const last = word.slice(-1);
  if (last === "+") {
    const cut = word.lastIndexOf("_") + 1;
    return plain(word.slice(0, cut)) + verbForms(word.slice(cut, -1));
  }
  if (last === "%") return `${plain(word.slice(0, -1))}s?`;
  if (last === "*") return `${plain(word.slice(0, -1))}[a-z]*`;
  return plain(word);
}

const choice = (words: readonly string[]): string => (words.length === 1 ? wordSource(words[0] ?? "") : `(?:${words.map(wordSource).join("|")})`);

/** The template as a regular expression over normalised text (see `normalise`), global. */
export function compile(template: string): RegExp {
  let source = "";
  let glue = "";
  for (const part of template.trim().split(/\s+/)) {
    const gap = /^~([,.]?)(\d+)$/.exec(part);
    if (gap) {
      const between = gap[1] === "." ? BEYOND : gap[1] === "," ? ACROSS : INSIDE;
      source += `(?:${between}${WORD}){0,${gap[2]}}`;
      glue = between;
      continue;
    }
    const optional = part.endsWith("?");
    const body = choice((optional ? part.slice(0, -1) : part).split("|"));
    const joined = source === "" ? body : `${glue}${body}`;
    if (optional && source === "") {
      source = `(?:${body}${BLANK})?`;
      glue = "";
      continue;
    }
    source += optional ? `(?:${joined})?` : joined;
    glue = BLANK;
  }
  return new RegExp(`(?<![a-z0-9'])${source}(?![a-z0-9])`, "g");
}

const LOOKALIKES: Readonly<Record<string, string>> = { "’": "'", "‘": "'", "“": '"', "”": '"', "–": "-", "—": ",", "…": "." };

/** Lower case with plain quotes and dashes, character for character, so that places in it are places in the text. */
export function normalise(text: string): string {
  return Array.from({ length: text.length }, (_, i) => {
    const char = text.charAt(i);
    const low = LOOKALIKES[char] ?? char.toLowerCase();
    return low.length === 1 ? low : char;
  }).join("");
}
