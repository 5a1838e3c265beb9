import type { Scheme } from "../../training";
import type { Token } from "./figures";

/** What one phrase says about a scheme. */
export interface Statement {
  readonly says: Partial<Scheme>;
  /** Work and its sets in one phrase; a part of it; something that goes with it. */
  readonly rank: "whole" | "part" | "extra";
  /** "ramp-up": a lighter set before the work. "step": one working set of several that differ. "circuit": said about every exercise. */
  readonly about: "working" | "ramp-up" | "step" | "circuit";
  /** Words of the source it takes, first and last. */
  readonly from: number;
  readonly to: number;
  /** "Four of them" may count reps, or sets of what was said before. */
  readonly either: boolean;
  /** A choice that had to be made, told to the coach: "the shorter rest was taken". */
  readonly remark: string | null;
  /** Was the figure passed over, and is known by its neighbours alone? */
  readonly isInferred?: true;
}

/** Does it say nothing that a set line holds, and is only told to the coach: "a plate a side"? */
export const isRemark = ({ says }: Statement): boolean => Object.keys(says).length === 0;

/** Tokens as one text, so that phrases can be found by pattern; "|" stands where a sentence ends. */
export interface Heard {
  readonly text: string;
  /** The token a character belongs to. */
  readonly tokenAt: (place: number) => Token | null;
  /** The place of the blank before a token, by its number. */
  readonly placeOf: (token: number) => number;
}

/** Joins tokens; every token stands between single blanks. */
export function heardFrom(tokens: readonly Token[]): Heard {
  let text = " ";
  const starts: number[] = [];
  for (const token of tokens) {
    if (token.stop && text.length > 1) text += "| ";
    starts.push(text.length);
    text += `${token.text} `;
  }
  const tokenAt = (place: number): Token | null => {
    let [low, high] = [0, starts.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((starts[middle] ?? 0) <= place) low = middle + 1;
      else high = middle;
    }
    return tokens[Math.max(0, low - 1)] ?? null;
  };
  return { text, tokenAt, placeOf: (token) => (starts[token] ?? text.length) - 1 };
}

/** A phrase found by a pattern. */
export interface Phrase {
  readonly says: Partial<Scheme>;
  readonly rank: Statement["rank"];
  readonly remark?: string | null;
  readonly either?: true;
}

/** One way of saying something: a pattern in the text of tokens, and what its groups mean. Null when it is nothing after all. */
export interface Saying {
  readonly find: RegExp;
  readonly read: (groups: Readonly<Record<string, string | undefined>>, match: RegExpExecArray) => Phrase | null;
}

/** A number; a range of two; an amount of time. Patterns for building others; they name no groups. */
export const N = String.raw`\d*\.?\d+`;
export const TIME = String.raw`(?:${N} (?:seconds?|secs?)|${N} (?:minutes?|mins?)(?: (?:and )?(?:15|20|30|40|45|50|10)(?: seconds?| secs?)?)?)`;

/** Whole seconds of "90 seconds", "2 minutes", "1 minute 30", "1 minute and 30 seconds"; null where it is no time. */
export function secondsOf(text: string | undefined): number | null {
  const match = /^(\d*\.?\d+) (seconds?|secs?|minutes?|mins?)(?: (?:and )?(\d+))?/.exec(text ?? "");
  if (!match) return null;
  const minutes = /^m/.test(match[2] ?? "");
  const extra = minutes && match[3] !== undefined && Number(match[3]) < 60 && /^(?:15|20|30|40|45|50|10)$/.test(match[3]) ? Number(match[3]) : 0;
  return Math.round(Number(match[1]) * (minutes ? 60 : 1)) + extra;
}

export const number = (text: string | undefined): number => Number(text ?? Number.NaN);

/** The few words right before a match. */
export const before = ({ input, index }: RegExpExecArray): string => input.slice(Math.max(0, index - 30), index + 1);
