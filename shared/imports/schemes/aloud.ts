import { NUMBER_VALUES } from "../../speech";
import type { Scheme } from "../../training";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** What a class is not told in numbers: sets that are counted as they are done, and sides that are done one after the other. */

const ORDINALS = new Map([["first", 1], ["second", 2], ["third", 3], ["fourth", 4], ["fifth", 5], ["sixth", 6]]);
/** So long nobody is silent within a set. Seconds. */
const SET_DONE = 8;
/** So many words between two tellings of the same work lead to the next set: "rest, and once more twelve". */
const NEAR = 25;
const AGAIN = /^(?:again|more|another|second|third|fourth|last|final|next|round)$/;
/** So many words around a figure its side may be said. */
const SIDE = 6;

type Side = "left" | "right";

const workOf = ({ says }: Ordered): string | null => {
  const { repsMin, repsMax, seconds, meters } = says;
  return repsMin !== undefined ? `${repsMin}-${repsMax}` : seconds !== undefined ? `s${seconds}` : meters !== undefined ? `m${meters}` : null;
};

/** The side that is said after a figure, else before it. */
function sideAt(words: readonly Word[], { from, to }: Ordered): Side | null {
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

/** "On the right", "left leg": and not "right, next". */
const isSide = (words: readonly Word[], at: number): boolean => /^(?:the|your|my|same|other)$/.test(words[at - 1]?.plain ?? "") || /^(?:side|leg|arm|hand|foot|knee|hip|one)$/.test(words[at + 1]?.plain ?? "");

/** "Set three", "the third and final set": the highest number of a set that is said; 0 where none is. */
function highestSet(words: readonly Word[], from: number, until: number): number {
  let most = 0;
  for (let at = from; at < until; at += 1) {
    if (!/^(?:set|round)$/.test(words[at]?.plain ?? "")) continue;
    const after = words[at + 1]?.plain ?? "";
    const number = NUMBER_VALUES.get(after) ?? (/^\d$/.test(after) ? Number(after) : 0);
    const isNumbered = number >= 2 && number <= 6 && !/^(?:sets?|reps?|times|kilos?|pounds?|seconds?)$/.test(words[at + 2]?.plain ?? "") && !/^(?:a|one|each|per|every)$/.test(words[at - 1]?.plain ?? "");
    const before = [1, 2, 3].map((step) => ORDINALS.get(words[at - step]?.plain ?? "") ?? 0);
    most = Math.max(most, isNumbered ? number : 0, ...before);
  }
  return most;
}

/**
 * Sets and sides of an exercise as they are done before the viewer's eyes.
 * @param own - the exercise's figures, in order
 * @param from - the word its time begins at, `until` the word it ends at
 */
export function doneAloud(own: readonly Ordered[], words: readonly Word[], from: number, until: number): Partial<Scheme> {
  const told = own.filter(({ about }) => about === "working").flatMap((statement) => {
    const work = workOf(statement);
    return work === null || statement.from < from || statement.from >= until ? [] : [{ statement, work }];
  });
  const main = told[0]?.work;
  const same = told.filter(({ work }) => work === main).map(({ statement }) => statement);
  const sides = same.map((statement) => sideAt(words, statement));
  const isSided = sides.includes("left") && sides.includes("right");
  const counted = isSided ? same.filter((_, at) => sides[at] === sides.find((side) => side !== null)) : same;
  let sets = counted.length > 0 ? 1 : 0;
  counted.forEach((statement, at) => {
    const last = counted[at - 1];
    if (!last) return;
    const between = words.slice(last.to + 1, statement.from + 1);
    const isDone = between.some(({ pause }) => pause >= SET_DONE);
    const again = between.length <= NEAR && (between.some(({ plain }) => AGAIN.test(plain)) || /^(?:more|again)$/.test(words[statement.to + 1]?.plain ?? ""));
    if (isDone || again) sets += 1;
  });
  const count = Math.max(sets, highestSet(words, from, until));
  return { ...(count >= 2 ? { sets: count } : {}), ...(isSided ? { eachSide: true as const } : {}) };
}
