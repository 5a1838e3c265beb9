/**
 * How words sound, well enough to find a name that was misheard: spelling reduced to sounds, and a distance between such spellings.
 * Known limit: made for English.
 */

const RULES: readonly (readonly [RegExp, string])[] = [
  [/^(?:kn|gn)/, "n"], [/^wr/, "r"], [/^ps/, "s"], [/wh/g, "w"], [/ght/g, "t"], [/ph/g, "f"], [/tch/g, "C"], [/ch/g, "C"], [/sh/g, "S"], [/th/g, "T"],
  [/ck/g, "k"], [/qu/g, "kw"], [/x/g, "ks"], [/c(?=[eiy])/g, "s"], [/c/g, "k"], [/ge\b/g, "j"], [/z/g, "s"],
  [/alf\b/g, "af"], [/mb\b/g, "m"], [/ough/g, "o"], [/igh/g, "i"], [/ai|ay|ei/g, "a"], [/ea/g, "e"], [/ee|ie\b|ey\b|y\b/g, "i"], [/oo|ou|ue\b|ew/g, "u"], [/oa|ow/g, "o"],
  [/au|aw/g, "o"], [/y/g, "i"], [/(.)\1+/g, "$1"],
];

const keys = new Map<string, string>();

/** The sounds of one lower-case word; words that sound alike mostly give one key. */
export function soundOf(word: string): string {
  const known = keys.get(word);
  if (known !== undefined) return known;
  let key = word.replace(/dge/g, "j").replace(/nge(?=s?$)/, "nj").replace(/(?<=[a-z]{2})e$/, (end) => (/[aeiou]/.test(word.slice(0, -1)) ? "" : end));
  for (const [written, said] of RULES) key = key.replace(written, said);
  if (keys.size > 20_000) keys.clear();
  keys.set(word, key);
  return key;
}

const VOWELS = "aeiou";
/** Pairs that ears and machines confuse. */
const NEAR = ["bp", "dt", "gk", "fv", "Ss", "CS", "Cj", "Cs", "js", "fT", "tT", "sT", "dT", "mn", "ST", "hk"];

const CODES = 128;
/** What it costs to hear one sound as another, by both their codes; and to drop or add one. */
const CHANGE = new Float64Array(CODES * CODES).fill(1);
const DROP = new Float64Array(CODES).fill(1);
for (let code = 0; code < CODES; code += 1) CHANGE[code * CODES + code] = 0;
const change = (a: string, b: string, cost: number): void => {
  CHANGE[a.charCodeAt(0) * CODES + b.charCodeAt(0)] = cost;
  CHANGE[b.charCodeAt(0) * CODES + a.charCodeAt(0)] = cost;
};
for (const a of VOWELS) for (const b of VOWELS) if (a !== b) change(a, b, 0.35);
for (const [a = "", b = ""] of NEAR) change(a, b, 0.4);
for (const vowel of VOWELS) DROP[vowel.charCodeAt(0)] = 0.5;
DROP["h".charCodeAt(0)] = 0.4;
DROP["s".charCodeAt(0)] = 0.7;

const LONGEST = 64;
let above = new Float64Array(LONGEST + 1);
let below = new Float64Array(LONGEST + 1);

/**
 * How alike two keys sound, 0 to 1: a weighted edit distance over the longer length.
 * @param least - below this the exact figure does not matter and 0 may be given
 */
export function likeness(a: string, b: string, least: number): number {
  const longest = Math.max(a.length, b.length);
  if (longest === 0) return 1;
  const most = (1 - least) * longest;
  if (longest > LONGEST || Math.abs(a.length - b.length) * 0.5 > most) return 0;
  above[0] = 0;
  for (let at = 0; at < b.length; at += 1) above[at + 1] = (above[at] ?? 0) + (DROP[b.charCodeAt(at)] ?? 1);
  for (let row = 0; row < a.length; row += 1) {
    const sound = a.charCodeAt(row);
    const drop = DROP[sound] ?? 1;
    below[0] = (above[0] ?? 0) + drop;
    let best = below[0];
    for (let at = 0; at < b.length; at += 1) {
      const other = b.charCodeAt(at);
      const cost = Math.min((above[at] ?? 0) + (CHANGE[sound * CODES + other] ?? 1), (above[at + 1] ?? 0) + drop, (below[at] ?? 0) + (DROP[other] ?? 1));
      below[at + 1] = cost;
      if (cost < best) best = cost;
    }
    if (best > most) return 0;
    [above, below] = [below, above];
  }
  return 1 - (above[b.length] ?? longest) / longest;
}
