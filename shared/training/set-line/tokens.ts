import { foldNumberWords } from "./number-words";
import type { Token } from "./token";

const SAME: Readonly<Record<string, string>> = {
  "×": "x", "✕": "x", "✖": "x", "*": "x", "–": "-", "—": "-", "−": "-", "‒": "-", "‐": "-", "‑": "-",
  "’": "'", "‘": "'", "′": "'", "`": "'", "”": '"', "“": '"', "″": '"', "％": "%", "•": ",", "·": ",",
};
const FRACTIONS: Readonly<Record<string, number>> = { "½": 0.5, "¼": 0.25, "¾": 0.75 };

/** One character for one, so that places in it are places in the text. */
export function normalise(text: string): string {
  let out = "";
  for (let i = 0; i < text.length; i++) {
    const char = text.charAt(i);
    const lower = char.toLowerCase();
    out += SAME[char] ?? (lower.length === 1 ? lower : char);
  }
  return out;
}

/**
 * A comma between figures is a decimal comma in front of a unit of weight, a percent sign or minutes, and after RPE or RIR;
 * elsewhere ("3x8,60s rest") it parts two statements.
 */
const DECIMAL_COMMA = /^\d+,\d{1,2}(?=\s*(?:kg|kilo|lb|pound|#|%|percent|per cent|min|m\b|'))/;
const EFFORT_COMMA = /^\d+,\d(?!\d)/;
const DECIMAL = /^\d*\.\d+|^\d+/;
const CLOCK = /^\d+:\d+(?!\d)/;

/**
 * Where only a count can stand, the comma ends it: "4x6,80kg" is six reps. After a two it may be a pair ("2x7,5kg"), and
 * halves and quarters of a minute are times ("3x1,5min").
 */
function countStands(rest: string, tokens: readonly Token[]): boolean {
  const [previous, second, third] = [tokens.at(-1), tokens.at(-2), tokens.at(-3)];
  if (previous?.text === "of") return /^(?:set|round)s?$/.test(second?.text ?? "");
  if (second?.kind !== "number") return false;
  if (["@", "at", "with"].includes(third?.text ?? "")) return false;
  if (["-", "to", "/"].includes(previous?.text ?? "")) return true;
  if ((previous?.text !== "x" && previous?.text !== "by") || third?.text === "x") return false;
  if (/^\d+,(?:(?:5|25|75)\s*(?:m|')|5(?!\d))/.test(rest)) return false;
  return second.value !== 2 || /^\d+,\d+\s*(?:%|per)/.test(rest);
}

function numberLength(rest: string, tokens: readonly Token[]): number {
  const previous = tokens.at(-1);
  const decimal = countStands(rest, tokens) ? null : DECIMAL_COMMA.exec(rest);
  const comma = decimal ?? (previous?.text === "rpe" || previous?.text === "rir" ? EFFORT_COMMA.exec(rest) : null);
  return (comma ?? DECIMAL.exec(rest))?.[0].length ?? 0;
}

/** Letters that run together with an x between two things: "3xAMRAP", "60kgx8". Gives the length of the first word. */
function wordLength(run: string, afterNumber: boolean, beforeFigure: boolean): number {
  if (run.length > 1 && afterNumber && /^x(?:amrap|max|bw|bodyweight|failure)/.test(run)) return 1;
  if (run.length > 1 && beforeFigure && run.endsWith("x") && run !== "max") return run.length - 1;
  return run.length;
}

/**
 * Cuts a line into numbers, clocks, words and signs; number words become numbers. Never fails.
 * @param norm - what `normalise` made of the line
 */
export function tokenise(norm: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let spaced = true;
  const push = (kind: Token["kind"], end: number, value = 0, shown = norm.slice(at, end)): void => {
    tokens.push({ kind, text: shown, value, start: at, end, spaced });
    at = end;
    spaced = false;
  };
  while (at < norm.length) {
    const char = norm.charAt(at);
    const rest = norm.slice(at);
    const before = at > 0 ? norm.charAt(at - 1) : " ";
    const previous = tokens.at(-1);
    if (/\s/.test(char)) {
      at++;
      spaced = true;
    } else if (/\d/.test(char) || (char === "." && /^\.\d/.test(rest) && !/[a-z0-9]/.test(before))) {
      const clock = CLOCK.exec(rest);
      if (clock) {
        push("clock", at + clock[0].length);
        continue;
      }
      const length = numberLength(rest, tokens);
      const fraction = FRACTIONS[norm.charAt(at + length)];
      push("number", at + length + (fraction === undefined ? 0 : 1), Number(rest.slice(0, length).replace(",", ".")) + (fraction ?? 0));
    } else if (FRACTIONS[char] !== undefined) {
      push("number", at + 1, FRACTIONS[char]);
    } else if (/[a-z]/.test(char)) {
      const run = /^[a-z]+/.exec(rest)?.[0] ?? char;
      const next = norm.charAt(at + run.length);
      const length = wordLength(run, previous?.kind === "number" && !spaced, /[\d½¼¾]/.test(next));
      const word = run.slice(0, length);
      // "a minute's rest", "90 seconds' rest"
      const owner = length === run.length ? (/^'(?:s(?![a-z]))?/.exec(rest.slice(length))?.[0].length ?? 0) : 0;
      push("word", at + length + owner, 0, word);
    } else if (char === "'" && /\d/.test(before) && /^'s(?![a-z])/.test(rest)) {
      at++; // the 24's
    } else if (rest.startsWith("''")) {
      push("sign", at + 2, 0, '"');
    } else {
      push("sign", at + 1);
    }
  }
  return foldNumberWords(tokens);
}
