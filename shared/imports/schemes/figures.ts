import { NUMBER_VALUES } from "../../speech";
import { isHesitation } from "../sentences/hesitations";
import type { Word } from "../types";

/** One token of speech about sets: a word, or a number whichever way it was said. */
export interface Token {
  /** Lower case; numbers as figures. */
  readonly text: string;
  readonly value: number | null;
  /** The word of the source it begins in. */
  readonly at: number;
  /** A sentence or a clause ends before it. */
  readonly stop: boolean;
}

/** With a common slip and a word of its own. */
const VALUES = new Map([...NUMBER_VALUES, ["fourty", 40], ["dozen", 12]] as const);

/** Which of several sets a word tells. */
export const ORDINAL_VALUES: ReadonlyMap<string, number> = new Map([["first", 1], ["second", 2], ["third", 3], ["fourth", 4], ["fifth", 5], ["sixth", 6]]);

/** Words between figures that soften and say nothing about the scheme. */
const SOFT = new Set("about around roughly approximately maybe probably roundabout like just only basically please perhaps approx".split(" "));

interface Piece {
  readonly text: string;
  readonly at: number;
  readonly stop: boolean;
  /** A pause before it keeps its number from joining the one before: "up in one, seventy-five seconds". */
  readonly apart: boolean;
}

/** A pause that parts numbers. Seconds. */
const PARTS_NUMBERS = 0.35;

/** "3x8-10" is "3 x 8 to 10", "42.5kg" is "42.5 kg", "twenty-five" is "twenty five", "90s" is "90 seconds". */
function piecesOf(plain: string): string[] {
  return plain
    .replace(/×/g, "x")
    .replace(/(\d),(\d{3})(?!\d)/g, "$1$2")
    .replace(/^(\d{1,2}):(\d\d)$/, (_, minutes: string, seconds: string) => `${Number(minutes) * 60 + Number(seconds)} seconds`)
    .replace(/(?<=\d)\s*[x*]\s*(?=\d)/g, " x ")
    .replace(/^(\d)-(\d)-(\d|x)(?:-(\d))?$/, "$1 $2 $3 $4")
    .replace(/(?<=\d)\s*[-–]\s*(?=\d)/g, " to ")
    .replace(/½/g, ".5")
    .replace(/(?<=\d)°/g, " degrees")
    .replace(/(\d)(kgs?|kilos?|lbs?|pounds?|%|secs?|seconds?|mins?|minutes?|m|metres?|meters?|s|x|reps?|sets?)(?![a-z])/g, (_, figure: string, unit: string) => `${figure} ${unit === "s" ? "seconds" : unit === "m" ? "metres" : unit === "%" ? "percent" : unit}`)
    .replace(/^(rpe|rir)[:-]?(?=\d)/, "$1 ")
    .replace(/@/g, " at ")
    .replace(/^(minute|second)s?'s?$/, "$1")
    .replace(/^(tempo|rest|rpe|load|weight|break|effort)'s$/, "$1 is")
    .split(/[\s/]+|(?<=[a-z])-(?=[a-z\d])|(?<=\d)-(?=[a-z])/)
    .map((part) => part.replace(/^[^a-z\d.]+|[^a-z\d%]+$/g, ""))
    .filter((part) => part !== "");
}

const numberOf = (text: string): number | null => (/^\d*\.?\d+$/.test(text) ? Number(text) : null);

/** Tens as weights have them: "three fifteen" is one only where its place tells. */
const isWeight = (tens: number, isTold: boolean): boolean => tens >= 20 || (isTold && tens >= 10 && tens % 5 === 0);

/** "Then one thirty-five for five", "at one eighty-five and rest": between such words only a weight is said like that. */
function isWeighed(pieces: readonly Piece[], at: number): boolean {
  const tail = [1, 2].findIndex((place) => VALUES.get(pieces[at + place]?.text ?? "") === undefined);
  const next = pieces[at + (tail < 0 ? 3 : tail + 1)];
  return /^(?:at|then|to|of|with)$/.test(pieces[at - 1]?.text ?? "") && tail !== 0 && isWeight(VALUES.get(pieces[at + 1]?.text ?? "") ?? 0, next?.text === "for" || /^(?:at|to|with)$/.test(pieces[at - 1]?.text ?? "")) && (next === undefined || next.stop || /^(?:for|and|so|on|but|rest|keep|today|again|then|with)$/.test(next.text));
}

/** After these "one forty-five" is no hundred and forty-five. */
const NO_HUNDRED = /^(?:set|number|week|exercise|day|step|round|rpe|episode|part|station|phase|level|last|another|just|only|this|that|first|second|third|fourth|fifth|next|final|exactly|by|x|times)$/;
/** "The third one fifty-five kilos". */
const ORDINAL = /^(?:first|second|third|fourth|fifth|sixth|next|last|final|other)$/;
/** "Sets of five ninety kilos": reps and their weight. */
const isOfSets = (pieces: readonly Piece[], at: number): boolean => pieces[at - 1]?.text === "of" && /^(?:sets?|rounds?)$/.test(pieces[at - 2]?.text ?? "");
const OF_TIME = /^(?:seconds?|secs?|minutes?|mins?|reps?|percent|degrees?|sets?|of|per|each)$/;

/** "Seventy for four, eighty for three": reps, and the next weight. */
function isOfWeight(pieces: readonly Piece[], at: number): boolean {
  if (pieces[at - 1]?.text !== "for") return false;
  const before = pieces[at - 2]?.text ?? "";
  return numberOf(before) !== null || VALUES.has(before) || /^(?:kilos?|kgs?|pounds?|lbs?)$/.test(before);
}
/** "The one twelve kilo": one thing of so much; of more than one it would be kilos. */
const isOneThing = (pieces: readonly Piece[], at: number, tail: { readonly count: number }): boolean =>
  pieces[at]?.text === "one" && /^(?:the|just|only|a)$/.test(pieces[at - 1]?.text ?? "") && /^(?:kilo|pound)$/.test(pieces[at + 1 + tail.count]?.text ?? "");

/** "One thirty-five", "two seventy", "one oh five": tens right after a hundred's figure are a weight, whatever follows but time. */
function isHundred(pieces: readonly Piece[], at: number, tail: { readonly value: number; readonly count: number }): boolean {
  const next = pieces[at + 1 + tail.count];
  return tail.value >= 20 && !NO_HUNDRED.test(pieces[at - 1]?.text ?? "") && !OF_TIME.test(next?.stop ? "" : (next?.text ?? ""));
}

/** "At eighty two minutes rest", "a hundred three minutes": after a weight, ones before minutes are a rest. */
const isRest = (pieces: readonly Piece[], ones: number, before: number): boolean => /^(?:minutes|mins)$/.test(pieces[ones + 1]?.text ?? "") && /^(?:at|one|two|three|hundred)$/.test(pieces[before]?.text ?? "");

/** So many hundreds, and the tens and ones after them; "a hundred and 12 reps" are two figures. @param read - pieces read so far, from piece `at` on */
function hundredAt(pieces: readonly Piece[], at: number, hundreds: number, read: number): { readonly value: number; readonly count: number } {
  const isOpen = (place: number): boolean => pieces[place]?.stop !== true && pieces[place]?.apart !== true;
  const and = isOpen(at + read) && pieces[at + read]?.text === "and" ? 1 : 0;
  const tail = isOpen(at + read + and) ? wholeAt(pieces, at + read + and) : null;
  const isApart = numberOf(pieces[at + read + and]?.text ?? "") !== null || /^(?:reps?|times)$/.test(pieces[at + read + and + (tail?.count ?? 0)]?.text ?? "");
  return tail && tail.value < 100 && !(and === 1 && isApart) && !(tail.value < 10 && isRest(pieces, at + read + and, at + read - 1)) ? { value: hundreds * 100 + tail.value, count: read + and + tail.count } : { value: hundreds * 100, count: read };
}

/** A whole number in words from piece `at` on, and how many pieces it takes. */
function wholeAt(pieces: readonly Piece[], at: number): { readonly value: number; readonly count: number } | null {
  const word = (place: number): string => (place > at && (pieces[place]?.stop || pieces[place]?.apart) ? "" : (pieces[place]?.text ?? ""));
  if (word(at) === "hundred") return hundredAt(pieces, at, 1, 1);
  const first = word(at) === "a" && /^(?:hundred|dozen)$/.test(word(at + 1)) ? 1 : undefined;
  const digits = numberOf(word(at));
  if (digits !== null) return word(at + 1) === "hundred" && Number.isInteger(digits) && digits < 10 ? hundredAt(pieces, at, digits, 2) : { value: digits, count: 1 };
  const value = first ?? VALUES.get(word(at));
  if (value === undefined) return null;
  let count = 1;
  let sum = value;
  const unit = VALUES.get(word(at + 1));
  if (sum >= 20 && sum % 10 === 0 && sum < 100 && unit !== undefined && unit > 0 && unit < 10 && !/^(?:sets?|rounds?|x|by|times|second|minute)$/.test(word(at + 2)) && !isRest(pieces, at + 1, at - 1)) {
    sum += unit;
    count += 1;
  }
  if (first === 1 && word(at + 1) === "dozen") return { value: 12, count: 2 };
  if (word(at + count) === "hundred") return hundredAt(pieces, at, sum, count + 1);
  if (sum <= 5 && sum > 0 && count === 1 && word(at + 1) === "oh" && (VALUES.get(word(at + 2)) ?? 10) < 10) {
    return { value: sum * 100 + (VALUES.get(word(at + 2)) ?? 0), count: 3 };
  }
  if (sum <= 9 && sum > 0 && count === 1 && !isOfSets(pieces, at) && !isOfWeight(pieces, at) && !(sum === 1 && ORDINAL.test(pieces[at - 1]?.text ?? ""))) {
    // "One twenty kilos", "one forty five pounds", "at seven twenty for eight"; "at six thirty" is a time of day.
    const tail = word(at + 1) === "" || numberOf(word(at + 1)) !== null ? null : wholeAt(pieces, at + 1);
    const after = word(at + 1 + (tail?.count ?? 0));
    // "With one twenty-five pound dumbbell" names one dumbbell.
    const isThing = /^(?:dumb|kettle|dumbbell|kettlebell|bell|plate|sandbag|ball|weight)s?$/.test(word(at + 2 + (tail?.count ?? 0)));
    const isTold = (sum <= 5 || after === "for") && isWeighed(pieces, at);
    const hasUnit = sum <= 3 && /^(?:kilos?|kg|kgs|pounds?|lbs?)$/.test(after);
    if (tail && tail.value >= 10 && tail.value < 100 && !isThing && !isOneThing(pieces, at, tail) && (isTold || hasUnit || (sum <= 5 && isHundred(pieces, at, tail)))) return { value: sum * 100 + tail.value, count: count + tail.count };
  }
  return { value: sum, count };
}

/** A number with its fraction: "forty two point five", "two and a half". */
function numberAt(pieces: readonly Piece[], at: number): { readonly value: number; readonly count: number } | null {
  const whole = wholeAt(pieces, at);
  if (!whole) return null;
  const text = (offset: number): string => pieces[at + whole.count + offset]?.text ?? "";
  if (Number.isInteger(whole.value)) {
    if (text(0) === "point") {
      const tail = [0, 1].map((place) => VALUES.get(text(place + 1)) ?? MANY.get(text(place + 1)) ?? numberOf(text(place + 1))).filter((value) => value !== null && value < 100);
      const first = tail[0];
      const decimals = first === undefined || first === null ? "" : String(first) + (first < 10 && tail[1] !== undefined && tail[1] !== null && tail[1] < 10 ? String(tail[1]) : "");
      if (decimals !== "") return { value: Number(`${whole.value}.${decimals}`), count: whole.count + 1 + decimals.length - (first !== undefined && first !== null && first >= 10 ? 1 : 0) };
    }
    if (text(0) === "and" && text(1) === "a" && /^hal(?:f|fs|ves)$/.test(text(2))) return { value: whole.value + 0.5, count: whole.count + 3 };
    if (text(0) === "half" && /^\d+$/.test(pieces[at]?.text ?? "")) return { value: whole.value + 0.5, count: whole.count + 1 };
    if (text(0) === "and" && text(1) === "half") return { value: whole.value + 0.5, count: whole.count + 2 };
    if (text(0) === "and" && text(1) === "a" && text(2) === "quarter") return { value: whole.value + 0.25, count: whole.count + 3 };
  }
  return whole;
}

const MANY = new Map([...VALUES].map(([word, value]): [string, number] => [word.endsWith("y") ? `${word.slice(0, -1)}ies` : word === "six" ? "sixes" : `${word}s`, value]));

/** Bells named by their weight: "the sixteens", "twenty-fours", "24s". */
function bellsAt(pieces: readonly Piece[], at: number): { readonly value: number; readonly count: number } | null {
  const [first, second] = [pieces[at]?.text ?? "", pieces[at + 1]?.stop ? "" : (pieces[at + 1]?.text ?? "")];
  const tens = VALUES.get(first);
  const units = MANY.get(second);
  if (tens !== undefined && tens >= 20 && units !== undefined && units > 0 && units < 10) return { value: tens + units, count: 2 };
  const alone = MANY.get(first);
  return alone !== undefined && alone >= 4 ? { value: alone, count: 1 } : null;
}

const BELLS_BEFORE = /^(?:the|of|these|those|my|your|two|both|with|same|these|grab|grabbing|on|using|own|pair)$/;

/** What letters said one by one, or misheard, stand for. */
const SAID_AS: readonly (readonly [readonly string[], string])[] = [
  [["r", "p", "e"], "rpe"], [["rp", "e"], "rpe"], [["r", "pe"], "rpe"], [["are", "p", "e"], "rpe"], [["r", "i", "r"], "rir"], [["are", "i", "are"], "rir"],
  [["a", "m", "r", "a", "p"], "amrap"], [["e", "mom"], "emom"], [["e", "m", "o", "m"], "emom"], [["am", "rap"], "amrap"], [["one", "rep", "max"], "1rm"], [["body", "weight"], "bodyweight"],
  [["per", "cent"], "percent"], [["kilo", "grams"], "kilos"], [["in", "between"], "between"], [["a", "couple", "of"], "two"], [["a", "couple"], "two"], [["couple", "of"], "two"], [["couple"], "two"], [["half", "a", "minute"], "30 seconds"],
  [["a", "minute", "and", "a", "half"], "90 seconds"], [["minute", "and", "a", "half"], "90 seconds"], [["minute", "and", "half"], "90 seconds"], [["a", "half", "minute"], "30 seconds"], [["three", "quarters", "of", "a", "minute"], "45 seconds"],
  [["a", "minute"], "1 minute"], [["a", "full", "minute"], "1 minute"], [["a", "good", "minute"], "1 minute"], [["a", "whole", "minute"], "1 minute"], [["one", "minute"], "1 minute"], [["twice"], "2 times"], [["both", "of", "the", "sets"], "2 sets"], [["both", "of", "my", "sets"], "2 sets"], [["both", "sets"], "2 sets"], [["thrice"], "3 times"], [["meters"], "metres"], [["meter"], "metres"], [["metre"], "metres"], [["oh"], "oh"],
];

/** In "sets of twelve, minute and a half" the number is no minutes. */
const MOST_MINUTES = 5;
/** "A minute fifteen": so many seconds more, where no other thing is counted. */
const SECONDS_MORE: ReadonlySet<number> = new Set([10, 15, 20, 30, 40, 45]);
const COUNTED = /^(?:reps?|times|kilos?|kgs?|pounds?|lbs?|metres|sets?|percent|each|per|of|to|or|a|on)$/;

interface Time {
  readonly said: readonly string[];
  readonly count: number;
}

/** "One minute and a half", "two and a half minute", "a minute fifteen": minutes with a part of one, and how many pieces say them. */
function minutesAt(pieces: readonly Piece[], at: number): Time | null {
  const text = (place: number): string => (pieces[at + place]?.stop === true ? "" : (pieces[at + place]?.text ?? ""));
  const first = pieces[at]?.text ?? "";
  const whole = first === "a" ? 1 : (VALUES.get(first) ?? numberOf(first));
  if (whole === null || whole > MOST_MINUTES || !Number.isInteger(whole)) return null;
  const rest = [1, 2, 3, 4].map(text).join(" ");
  if (first !== "a" && /^(?:and a half min(?:ute)?s?|min(?:ute)?s? and a half)$/.test(rest)) return { said: [String(whole + 0.5), "minutes"], count: 5 };
  // "A minute and fifteen between": with "and" the words behind must say that it is a rest.
  const and = text(2) === "and" ? 1 : 0;
  const more = /^min(?:ute)?s?$/.test(text(1)) && pieces[at + 2 + and]?.apart !== true ? (VALUES.get(text(2 + and)) ?? numberOf(text(2 + and))) : null;
  const behind = text(3 + and);
  const isUnit = /^(?:seconds?|secs?)$/.test(behind);
  if (more === null || !SECONDS_MORE.has(more) || COUNTED.test(behind) || VALUES.has(behind) || numberOf(behind) !== null || (and === 1 && !isUnit && !/^(?:between|in|rest|off|after)$/.test(behind))) return null;
  return { said: [String(whole * 60 + more), "seconds"], count: 3 + and + (isUnit ? 1 : 0) };
}

function sayings(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  for (let at = 0; at < pieces.length;) {
    const time = minutesAt(pieces, at);
    if (time) {
      const { at: word, stop, apart } = pieces[at] as Piece;
      time.said.forEach((text, place) => out.push({ text, at: word, stop: place === 0 && stop, apart: place === 0 && apart }));
      at += time.count;
      continue;
    }
    const found = SAID_AS.find(([said]) => said.every((word, place) => pieces[at + place]?.text === word && (place === 0 || pieces[at + place]?.stop !== true)));
    const piece = pieces[at] as Piece;
    if (!found) {
      out.push(piece);
      at += 1;
      continue;
    }
    found[1].split(" ").forEach((text, place) => out.push({ text, at: piece.at, stop: place === 0 && piece.stop, apart: place === 0 && piece.apart }));
    at += found[0].length;
  }
  return out;
}

/** Numbers heard as words that sound alike, where only a number can stand. */
function homophones(pieces: readonly Piece[]): Piece[] {
  const isCount = (text: string | undefined): boolean => text !== undefined && (VALUES.has(text) || numberOf(text) !== null);
  return pieces.map((piece, at) => {
    const [before, after, later] = [pieces[at - 1]?.text, pieces[at + 1]?.text, pieces[at + 2]?.text];
    const ofNumber = /^(?:sets|rounds)$/.test(after ?? "") && later === "of" && !isCount(before);
    const swap = (text: string): Piece => ({ ...piece, text });
    if (piece.text === "ate" && (before === "of" || before === "to" || /^(?:reps?|to)$/.test(after ?? ""))) return swap("eight");
    if (piece.text === "for" && ofNumber && !/^(?:go|going|aim|aiming|doing|here|today|this|it|that|these|looking|up|kilos?|pounds)$/.test(before ?? "")) return swap("four");
    if ((piece.text === "free" || piece.text === "tree") && ofNumber) return swap("three");
    if ((piece.text === "to" || piece.text === "too") && ofNumber && before !== "go" && before !== "want" && before !== "going") return swap("two");
    if (piece.text === "won" && /^(?:sets?|reps?|rounds?)$/.test(after ?? "")) return swap("one");
    if (piece.text === "tan" && before === "of") return swap("ten");
    if (piece.text === "sex" && isCount(before) && after === "of") return swap("sets");
    if (piece.text === "sits" && isCount(before) && after === "of") return swap("sets");
    return piece;
  });
}

/** "10 - 12 reps". */
const isDash = (words: readonly Word[], at: number): boolean => /^[-\u2013\u2014]$/.test(words[at]?.text ?? "") && [at - 1, at + 1].every((beside) => /^\d/.test(words[beside]?.plain ?? ""));
/** "2 and 1/2 minutes". */
const FRACTIONS: Readonly<Record<string, readonly string[]>> = { "1/2": ["half"], "\u00bd": ["half"], "1/4": ["a", "quarter"] };

/**
 * The words as tokens: numbers of every form as figures, hesitations and softening words out, units in one spelling.
 * @param from, to - the stretch of words
 * @param skip - words that say nothing here: hesitations, sounds, names of exercises
 * @param starts - words that begin a sentence
 */
export function tokensOf(words: readonly Word[], from: number, to: number, skip: ReadonlySet<number>, starts: ReadonlySet<number>): Token[] {
  const pieces: Piece[] = [];
  let stop = false;
  let named = false;
  for (let at = from; at < to; at += 1) {
    const word = words[at] as Word;
    stop ||= starts.has(at);
    if (skip.has(at)) {
      // "Number four, cable rows, forty-five kilos": what was left out between numbers parts them.
      named ||= !isHesitation(word.plain);
      continue;
    }
    let apart = named || word.pause >= PARTS_NUMBERS || /[,;]$/.test(words[at - 1]?.text ?? "");
    named = false;
    // "The 24s" are bells; "24s" alone is a time.
    const bells = /^\d+(?:\.\d+)?s$/.test(word.plain) && BELLS_BEFORE.test(words[at - 1]?.plain ?? "");
    for (const text of bells ? [word.plain] : isDash(words, at) ? ["to"] : (FRACTIONS[word.plain] ?? piecesOf(word.plain))) {
      if (SOFT.has(text)) continue;
      pieces.push({ text, at, stop, apart });
      stop = false;
      apart = false;
    }
    if (/[.!?;:]["')]*$/.test(word.text) && !/^\d+\.$/.test(word.text)) stop = true;
  }
  const heard = homophones(sayings(pieces));
  const tokens: Token[] = [];
  for (let at = 0; at < heard.length;) {
    const piece = heard[at] as Piece;
    const number = bellsAt(heard, at) ? null : numberAt(heard, at);
    const bells = number ? null : bellsAt(heard, at);
    if (bells) tokens.push({ text: `${bells.value}s`, value: null, at: piece.at, stop: piece.stop });
    else tokens.push(number ? { text: String(number.value), value: number.value, at: piece.at, stop: piece.stop } : { text: piece.text, value: null, at: piece.at, stop: piece.stop });
    at += (bells ?? number)?.count ?? 1;
  }
  return tokens.filter(({ text }, at) => !(/^(?:full|whole|good|solid)$/.test(text) && tokens[at - 1]?.value !== null && /^(?:minutes?|seconds?)$/.test(tokens[at + 1]?.text ?? "")));
}
