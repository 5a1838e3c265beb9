import { ANGLE_WORDS, INSERT_WORD, NEED_WORDS, ON_WORDS, SET_NUMBER, setNumber, SIZE_WORDS, type FactWord } from "./shot-words";
import type { Shot } from "./types";

/** Facts as they are read; a key that is absent was not stated, null was stated as open ("any angle"). */
type Facts = { -readonly [Key in Exclude<keyof Shot, "subject">]?: Shot[Key] };
interface Reading {
  readonly facts: Facts;
  readonly insert: boolean;
}

const SETS = new RegExp(`^(?:on )?sets? (${SET_NUMBER}(?:\\s*(?:-|–|to|and|&|\\+|/)\\s*${SET_NUMBER})*)(?![\\w-])`, "i");
const NTH_SET = new RegExp(`^(?:on )?(?:the )?(${SET_NUMBER}) sets?(?![\\w-])`, "i");
const MORE_SETS = new RegExp(`^(${SET_NUMBER}(?:\\s*(?:-|–|to|and|&|\\+|/)\\s*${SET_NUMBER})*)$`, "i");
const ANY_SET = /^(?:on )?(?:any|every|all|each) sets?(?![\w-])/i;
const TIME = /^(?:for )?(\d+(?:\.\d+)?)\s?(s|secs?|seconds?|mins?|minutes?)(?![\w-])/i;
const CLOCK = /^(\d{1,3}):([0-5]\d)(?![\w:-])/;
/** Words that may stand among facts and add nothing. */
const FILLER = /^(?:shot|view|angle|sets?|and)(?![\w-])/i;
const NONE: Reading = { facts: {}, insert: false };

/** "1-3", "1 and 3", "2nd" as numbers in order, each once. */
function setNumbers(text: string): number[] {
  const numbers: number[] = [];
  for (const piece of text.split(/\s*(?:and|&|\+|\/)\s*/i)) {
    const [from = 0, to = from] = piece.split(/\s*(?:-|–|to)\s*/i).map(setNumber);
    for (let number = Math.min(from, to); number <= Math.max(from, to); number += 1) numbers.push(number);
  }
  return [...new Set(numbers)].filter((number) => number > 0).sort((a, b) => a - b);
}

function wordAt<Value>(text: string, words: readonly FactWord<Value>[]): { length: number; value: Value } | null {
  for (const { written, value } of words) {
    const hit = written.exec(text);
    if (hit) return { length: hit[0].length, value };
  }
  return null;
}

/** The fact at the beginning of `text`, or null. */
function factAt(text: string): { length: number; reading: Reading } | null {
  const found = (length: number, facts: Facts): { length: number; reading: Reading } => ({ length, reading: { facts, insert: false } });
  const clock = CLOCK.exec(text);
  if (clock) return found(clock[0].length, { seconds: Number(clock[1]) * 60 + Number(clock[2]) });
  const time = TIME.exec(text);
  if (time) return found(time[0].length, { seconds: Number(time[1]) * (/^m/i.test(time[2] ?? "") ? 60 : 1) });
  const sets = SETS.exec(text) ?? NTH_SET.exec(text);
  const numbers = sets ? setNumbers(sets[1] ?? "") : [];
  if (sets && numbers.length > 0) return found(sets[0].length, { sets: numbers });
  const any = ANY_SET.exec(text);
  if (any) return found(any[0].length, { sets: null });
  const insert = INSERT_WORD.exec(text);
  if (insert) return { length: insert[0].length, reading: { facts: {}, insert: true } };
  const on = wordAt(text, ON_WORDS);
  if (on) return found(on.length, { on: on.value });
  const need = wordAt(text, NEED_WORDS);
  if (need) return found(need.length, { need: need.value });
  const angle = wordAt(text, ANGLE_WORDS);
  if (angle) return found(angle.length, { angle: angle.value });
  const size = wordAt(text, SIZE_WORDS);
  return size ? found(size.length, { size: size.value }) : null;
}

/** Two readings as one, or null when they state the same fact twice. */
function merged(a: Reading, b: Reading): Reading | null {
  const twice = Object.keys(b.facts).some((key) => Object.hasOwn(a.facts, key)) || (a.insert && b.insert);
  return twice ? null : { facts: { ...a.facts, ...b.facts }, insert: a.insert || b.insert };
}

/** Reads one part between commas, "side close-up" included; null unless every word of it is a fact. */
function readPart(part: string): Reading | null {
  let reading = NONE;
  let rest = part.trim();
  if (!factAt(rest)) return null;
  while (rest) {
    const fact = factAt(rest) ?? { length: FILLER.exec(rest)?.[0].length ?? 0, reading: NONE };
    const next = fact.length > 0 ? merged(reading, fact.reading) : null;
    if (!next) return null;
    reading = next;
    rest = rest.slice(fact.length).trimStart();
  }
  return reading;
}

/** Reads the comma-separated parts; what is no fact, or is one stated before, is left over. */
function readFacts(text: string): { reading: Reading; left: string[]; count: number } {
  let reading = NONE;
  let count = 0;
  let afterSets = false;
  const left: string[] = [];
  for (const part of text.split(",")) {
    const more = afterSets ? MORE_SETS.exec(part.trim()) : null;
    if (more) {
      const sets = [...new Set([...(reading.facts.sets ?? []), ...setNumbers(more[1] ?? "")])].sort((a, b) => a - b);
      reading = { ...reading, facts: { ...reading.facts, sets } };
      continue;
    }
    const read = readPart(part);
    const next = read && merged(reading, read);
    afterSets = next !== null && Array.isArray(read?.facts.sets);
    if (next) {
      reading = next;
      count += 1;
    } else if (part.trim()) left.push(part.trim());
  }
  return { reading, left, count };
}

function shotOf({ facts, insert }: Reading, subject: string): Shot {
  const fill = insert ? ("insert" as const) : null;
  return {
    angle: Object.hasOwn(facts, "angle") ? (facts.angle ?? null) : fill,
    size: Object.hasOwn(facts, "size") ? (facts.size ?? null) : fill,
    sets: facts.sets ?? null,
    on: facts.on ?? null,
    need: facts.need ?? "must",
    seconds: facts.seconds ?? null,
    subject,
  };
}

/** The first colon that is not inside a time such as 1:30; without one, a dash between spaces. */
const END = /:(?!(?<=\d:)[0-5]\d(?!\d))/;
const DASH_END = /\s[-–—]\s/;

/** The text before and after the end of the facts; null when nothing ends them. */
function splitFacts(text: string): { facts: string; after: string } | null {
  const end = END.exec(text) ?? DASH_END.exec(text);
  return end ? { facts: text.slice(0, end.index), after: text.slice(end.index + end[0].length).trim() } : null;
}

/**
 * Reads a shot line: facts between commas in any order, a colon (or a dash between spaces), then what is to be seen.
 *
 * "Side, full, set 2, 12 s, nice: the whole arm path". Words before the colon that are no fact belong to the subject; a line without
 * any fact is all subject; a line of nothing but facts needs no colon. Of two answers to one question the first counts. Never throws.
 */
export function parseShotLine(text: string): Shot {
  const split = splitFacts(text);
  const { reading, left, count } = readFacts(split?.facts ?? text);
  if (count === 0 || (!split && left.length > 0)) return shotOf(NONE, text.trim());
  return shotOf(reading, [left.join(", "), split?.after ?? ""].filter(Boolean).join(": "));
}
