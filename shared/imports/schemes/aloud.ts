import { NUMBER_VALUES } from "../../speech";
import type { Scheme } from "../../training";
import type { Word } from "../types";
import type { Ordered } from "./compose";
import { ORDINAL_VALUES, tokensOf } from "./figures";

/** What a class is not told in numbers: sets that are counted as they are done, and sides that are done one after the other. */

/** So long nobody is silent within a set. Seconds. */
const SET_DONE = 8;
/** So many words between two tellings of the same work lead to the next set: "rest, and once more twelve". */
const NEAR = 25;
const AGAIN = /^(?:again|more|another|second|third|fourth|last|final|next|round)$/;
/** So many words around a figure its side may be said. */
const SIDE = 6;

type Side = "left" | "right";

/** A telling of the work of one set, in words. */
interface Told {
  readonly from: number;
  readonly to: number;
  /** Is it told without its number: "and once more"? */
  readonly isAgain?: true;
}

const workOf = ({ says }: Ordered): string | null => {
  const { repsMin, repsMax, seconds, meters } = says;
  return repsMin !== undefined ? `${repsMin}-${repsMax}` : seconds !== undefined ? `s${seconds}` : meters !== undefined ? `m${meters}` : null;
};

/** "On the right", "left leg": and not "right, next". */
const isSide = (words: readonly Word[], at: number): boolean => /^(?:the|your|my|same|other)$/.test(words[at - 1]?.plain ?? "") || /^(?:side|leg|arm|hand|foot|knee|hip|one)$/.test(words[at + 1]?.plain ?? "");

/** The side that is said after a figure, else before it. */
function sideAt(words: readonly Word[], { from, to }: Told): Side | null {
  const look = (places: readonly number[]): Side | null => {
    for (const at of places) {
      const plain = words[at]?.plain ?? "";
      if ((plain === "left" || plain === "right") && isSide(words, at)) return plain;
      if (/^\d|^$/.test(plain) || NUMBER_VALUES.has(plain)) return null;
    }
    return null;
  };
  const steps = Array.from({ length: SIDE }, (_, step) => step + 1);
  return look(steps.map((step) => to + step)) ?? look(steps.map((step) => from - step));
}

/** "Set three", "the third and final set": the highest number of a set that is said; 0 where none is. */
function highestSet(words: readonly Word[], from: number, until: number): number {
  let most = 0;
  for (let at = from; at < until; at += 1) {
    if (!/^(?:set|round)$/.test(words[at]?.plain ?? "")) continue;
    const after = words[at + 1]?.plain ?? "";
    const number = NUMBER_VALUES.get(after) ?? (/^\d$/.test(after) ? Number(after) : 0);
    const isNumbered = number >= 2 && number <= 6 && !/^(?:sets?|reps?|times|kilos?|pounds?|seconds?)$/.test(words[at + 2]?.plain ?? "") && !/^(?:a|one|each|per|every)$/.test(words[at - 1]?.plain ?? "");
    const before = [1, 2, 3].map((step) => ORDINAL_VALUES.get(words[at - step]?.plain ?? "") ?? 0);
    most = Math.max(most, isNumbered ? number : 0, ...before);
  }
  return most;
}

/** Behind a number it is something else, or the end of it: "twelve kilos", "ten to go". */
const NO_REPS = /^(?:kilos?|kgs?|pounds?|lbs?|seconds?|minutes?|percent|sets?|rounds?|years?|metres?|to|or|by|o'clock|left|down|point)$/;
/** So few tokens are between the numbers of a count. */
const COUNT = 3;
/** Fewer reps than this are counted, and not told again. */
const FEWEST = 4;
const NONE: ReadonlySet<number> = new Set();

/** Numbers said in some words, each with the ones counted before it: "four five six". */
function countsIn(words: readonly Word[], from: number, until: number): { readonly at: number; readonly value: number; readonly isCounted: boolean; readonly isReps: boolean }[] {
  const tokens = tokensOf(words, from, until, NONE, NONE);
  const numbers = tokens.flatMap(({ value, at }, place) => (value === null || value === undefined ? [] : [{ at, value, place }]));
  return numbers.map(({ at, value, place }, index) => {
    const [last, next] = [numbers[index - 1], numbers[index + 1]];
    const isAfter = last !== undefined && place - last.place <= COUNT && last.value === value - 1;
    const isBefore = next !== undefined && next.place - place <= COUNT && next.value === value + 1;
    // "Six, seven and ten": a count that is not heard to its end.
    const before = numbers[index - 2];
    const isSkipped = last !== undefined && before !== undefined && place - last.place <= COUNT && last.place - before.place <= COUNT && before.value + 1 === last.value && last.value < value;
    return { at, value, isCounted: isAfter || isBefore || isSkipped, isReps: !NO_REPS.test(tokens[place + 1]?.text ?? "") };
  });
}

/** The same is done once more. */
const ONCE_MORE = /(?:^| )(?:again|once more|one more (?:time|set|round|go)|another (?:set|round|go)|second (?:set|round|time)|third (?:set|round|time))$/;
/** So many words behind it the set begins. */
const BEGUN = 12;

/** Sets that nobody tells a number of: "and once more", and then a silence as long as a set. @param told - the tellings with numbers */
function repeats(words: readonly Word[], told: readonly Told[], until: number): Told[] {
  const out: Told[] = [];
  for (let at = (told[0]?.to ?? until) + 1; at < until; at += 1) {
    const last = Math.max(...[...told, ...out].filter(({ from }) => from < at).map(({ from }) => from));
    const isNear = told.some(({ from }) => from >= at && from <= at + BEGUN);
    const isSilent = (from: number, to: number): boolean => words.slice(from + 1, Math.min(until, to) + 1).some(({ pause }) => pause >= SET_DONE);
    if (!isNear && isSilent(last, at) && isSilent(at, at + BEGUN) && ONCE_MORE.test(words.slice(at - 2, at + 1).map(({ plain }) => plain).join(" "))) out.push({ from: at, to: at, isAgain: true });
  }
  return out;
}

/** "That's your ten": told when it is done, not before. */
const DONE = /^(?:that's|that|there's|were|was)$/;

/** Every telling of the same work: what was heard, and the same number wherever it is said and not counted. */
function tellings(own: readonly Ordered[], words: readonly Word[], from: number, until: number): Told[] {
  const told = own.filter(({ about }) => about === "working").flatMap((statement) => {
    const work = workOf(statement);
    return work === null || statement.from < from || statement.from >= until ? [] : [{ statement, work }];
  });
  const main = told[0];
  if (!main) return [];
  const same: Told[] = told.filter(({ work }) => work === main.work).map(({ statement }) => statement);
  const { repsMin, repsMax } = main.statement.says;
  if (repsMin === undefined || repsMin !== repsMax || repsMin < FEWEST) return same;
  const counts = countsIn(words, from, until);
  const isCount = ({ from: place }: Told): boolean => counts.some(({ at, isCounted }) => at === place && isCounted);
  const heard = same.filter((telling, at) => at === 0 || !isCount(telling));
  const isHeard = (place: number): boolean => own.some((statement) => statement.from <= place && place <= statement.to);
  const more = counts.filter(({ at, value, isCounted, isReps }) => value === repsMin && !isCounted && isReps && at > main.statement.to && !isHeard(at) && !words.slice(at - 2, at).some(({ plain }) => DONE.test(plain))).map(({ at }) => ({ from: at, to: at }));
  return [...heard, ...more].sort((a, b) => a.from - b.from);
}

/** The speaker goes over to the other side. */
const OVER = /^(?:swap|switch|switching|change|other|opposite)$/;
const TURNS = /^(?:roll|turn|come|and)$/;
/** "Ten a side": both are told at once. */
const BOTH = /^(?:each|per|both|every|either)$/;

/**
 * Sets and sides of an exercise as they are done before the viewer's eyes.
 * @param own - the exercise's figures, in order
 * @param from - the word its time begins at, `until` the word it ends at
 * @param isOneSided - is it done one side after the other?
 */
export function doneAloud(own: readonly Ordered[], words: readonly Word[], from: number, until: number, isOneSided = false): Partial<Scheme> {
  const numbered = tellings(own, words, from, until);
  const told = [...numbered, ...repeats(words, numbered, until)].sort((a, b) => a.from - b.from);
  const sides = told.map((telling) => sideAt(words, telling));
  const isSided = sides.includes("left") && sides.includes("right");
  const isTwofold = isSided || isOneSided || own.some(({ says }) => says.eachSide === true);
  const plain = (start: number, end: number): string[] => words.slice(start, end).map((word) => word.plain);
  /** Are both sides told with this figure? */
  const isBoth = ({ to }: Told): boolean => plain(to + 1, to + 4).some((word, at, after) => BOTH.test(word) || (word === "a" && /^(?:side|leg|arm|hand)$/.test(after[at + 1] ?? "")));
  const isOver = (last: Told, { from: next, to }: Told): boolean => {
    const between = plain(last.to + 1, next);
    if (between.length <= 2 && between.every((word) => word === "and" || word === "then")) return true;
    const all = [...between, ...plain(to + 1, to + 5)];
    const place = all.findLastIndex((word, at) => OVER.test(word) || (word === "over" && TURNS.test(all[at - 1] ?? "")));
    // "The other side, and one more time, first side": over, and back again.
    return place >= 0 && !between.slice(place).some((word) => /^(?:again|more|first)$/.test(word));
  };
  let sets = told.length > 0 ? 1 : 0;
  /** Was the other side done as well? */
  let isWhole = told[0] !== undefined && (!isTwofold || isBoth(told[0]));
  told.forEach((telling, at) => {
    const last = told[at - 1];
    if (!last) return;
    const between = words.slice(last.to + 1, telling.from + 1);
    const [side, before] = [sides[at], sides[at - 1]];
    if (isTwofold && !isWhole && ((side && before && side !== before) || isOver(last, telling))) {
      isWhole = true;
      return;
    }
    const isDone = telling.isAgain === true || between.some(({ pause }) => pause >= SET_DONE);
    const again = between.length <= NEAR && (between.some(({ plain: word }) => AGAIN.test(word)) || /^(?:more|again)$/.test(words[telling.to + 1]?.plain ?? ""));
    if (!isDone && !again) return;
    sets += 1;
    isWhole = !isTwofold || isBoth(telling);
  });
  const count = Math.max(sets, highestSet(words, from, until));
  return { ...(count >= 2 ? { sets: count } : {}), ...(isSided ? { eachSide: true as const } : {}) };
}
