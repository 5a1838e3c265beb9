import type { Angle } from "../exercises";
import type { Shot, ShotSize } from "./types";

/** One fact of a shot line: how it may be written, and what it states. Patterns match from where reading stands. */
export interface FactWord<Value> {
  readonly written: RegExp;
  readonly value: Value;
}

const word = (source: string): RegExp => new RegExp(`^(?:${source})(?![\\w-])`, "i");

/** "insert" is both an angle and a size; it is read apart, in `parseShotLine`. */
export const INSERT_WORD = word("insert(?: shot)?|detail(?: shot)?");

/** Camera angles; trade terms, from memory. Longer spellings first. */
export const ANGLE_WORDS: readonly FactWord<Exclude<Angle, "insert"> | null>[] = [
  { written: word("any angle"), value: null },
  { written: word("(?:from (?:the )?)?(?:three[- ]quarters?|3/4|¾)(?:[- ](?:front|view|angle))?"), value: "three-quarter" },
  { written: word("(?:from (?:the )?)?(?:rear|back|behind)(?:[- ](?:view|angle))?"), value: "rear" },
  { written: word("(?:from (?:the )?)?(?:front)(?:[- ](?:on|view|angle))?|from in front|head[- ]on"), value: "front" },
  { written: word("(?:from (?:the )?)?(?:(?:left |right )?side|profile)(?:[- ](?:on|view|angle))?"), value: "side" },
  { written: word("(?:from )?(?:high|overhead)(?:[- ](?:view|angle))?|from above|top[- ](?:view|down)"), value: "high" },
  { written: word("(?:from )?(?:low|floor[- ]level|ground[- ]level)(?:[- ](?:view|angle))?|from (?:the floor|below)"), value: "low" },
];

/** Shot sizes; trade terms, from memory. */
export const SIZE_WORDS: readonly FactWord<Exclude<ShotSize, "insert"> | null>[] = [
  { written: word("any size"), value: null },
  { written: word("(?:extreme |very )?(?:wide|long)(?:[- ]shot)?|[ew]?ws"), value: "wide" },
  { written: word("full(?:[- ](?:shot|body|length))?|head[- ]to[- ]toe|whole body|fs"), value: "full" },
  { written: word("(?:medium|mid)[- ]close(?:[- ]?up)?|mcu|(?:extreme )?close(?:[- ]?up)?|e?cu"), value: "close-up" },
  { written: word("(?:medium|mid)(?:[- ]shot)?|waist[- ]up|ms"), value: "medium" },
];

/** The word "set" that follows is read by itself; "warm-up" and "work" alone are too common to be facts. */
export const ON_WORDS: readonly FactWord<Exclude<Shot["on"], null>>[] = [
  { written: word("(?:on )?(?:the |a )?(?:ramp[- ]?up|warm[- ]?up(?= sets?\\b))"), value: "ramp-up" },
  { written: word("(?:on )?(?:the |a )?work(?:ing)?(?= sets?\\b)"), value: "working" },
  { written: word("(?:on )?(?:the |a )?demo(?:nstration)?"), value: "demonstration" },
];

/** Whether the video can do without the shot. */
export const NEED_WORDS: readonly FactWord<Shot["need"]>[] = [
  { written: word("must(?: have|-have)?|needed"), value: "must" },
  { written: word("nice(?: to have|-to-have)?|optional|if there is time"), value: "nice" },
];

const COUNT_WORDS = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"] as const;
const ORDER_WORDS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"] as const;

/** "2", "two", "2nd" or "second" as a number; 0 when it is none of these. */
export function setNumber(text: string): number {
  const lower = text.toLowerCase();
  const named = Math.max((COUNT_WORDS as readonly string[]).indexOf(lower), (ORDER_WORDS as readonly string[]).indexOf(lower)) + 1;
  return named || Number(/^\d{1,3}(?=$|st|nd|rd|th)/.exec(lower)?.[0] ?? 0);
}

/** Every way a set may be numbered, as one alternation of a regular expression. */
export const SET_NUMBER = `(?:\\d{1,3}(?:st|nd|rd|th)?|${[...COUNT_WORDS, ...ORDER_WORDS].join("|")})`;

/** Angles and sizes in plain words: "from behind, waist up". */
export const ANGLE_NAMES: Readonly<Record<Angle, string>> = {
  front: "from the front", "three-quarter": "three-quarter", side: "from the side", rear: "from behind", high: "from above", low: "from floor level", insert: "detail",
};
export const SIZE_NAMES: Readonly<Record<ShotSize, string>> = {
  wide: "whole body with room around it", full: "head to toe", medium: "waist up", "close-up": "close-up", insert: "detail",
};
