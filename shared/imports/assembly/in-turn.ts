import { isSeveral, repsOf, type Ordered } from "../schemes/compose";
import { ORDINAL_VALUES } from "../schemes/figures";
import { plainIn } from "../source/words";
import type { Word } from "../types";
import { ASIDE, BEGINS, GOES_ON } from "./assembly";

/** Sets told by their place in the row: "three sets of five: first one five, second one five, and on the third I got four". */

const ORDINALS = new Map([...ORDINAL_VALUES, ["1st", 1], ["2nd", 2], ["3rd", 3], ["4th", 4], ["5th", 5], ["6th", 6]] as const);
/** So many words around a number of reps its ordinal may be said. */
const [BEFORE, BEHIND] = [5, 4];

const DONE = /^(?:got|did|done|managed|hit|made|was|were)$/;

/** The ordinal nearest before some reps, else "on the first one" right behind them; 0 where none is said. */
function ordinalOf(own: readonly Ordered[], at: number, words: readonly Word[]): number {
  const { from, to } = own[at] as Ordered;
  const [last, next] = [own[at - 1]?.to ?? -1, own[at + 1]?.from ?? words.length];
  const before = plainIn(words, Math.max(last + 1, from - BEFORE), from).findLast((word) => ORDINALS.has(word));
  const behind = /^(?:reps )?(?:on|in|for) (?:the|that|my) (\w+)/.exec(plainIn(words, to + 1, Math.min(next, to + 1 + BEHIND)).join(" "))?.[1];
  return ORDINALS.get(behind ?? "") ?? ORDINALS.get(before ?? "") ?? 0;
}

/** "Three sets of 20, and I got 20, 20, 17": reps in a row, a word apart at most; empty where there are not as many as sets were planned. */
function runOf(own: readonly Ordered[], words: readonly Word[]): readonly number[] {
  const plan = own.findIndex(isSeveral);
  const sets = own[plan]?.says.sets ?? 0;
  for (let at = plan + 1; plan >= 0 && at + sets <= own.length; at += 1) {
    const run = Array.from({ length: sets }, (_, step) => at + step);
    const isRun = run.every((place, step) => repsOf(own[place] as Ordered) !== undefined && (step === 0 || (own[place]?.from ?? 0) - (own[place - 1]?.to ?? 0) <= 3));
    if (isRun && DONE.test(words[(own[at]?.from ?? 0) - 1]?.plain ?? "")) return run;
  }
  return [];
}

/** The longest row of reps told as first, second, third; empty where there are not two of them. */
function rowOf(own: readonly Ordered[], words: readonly Word[]): readonly number[] {
  const row: number[] = [];
  own.forEach((statement, at) => {
    if (statement.about !== "working" || repsOf(statement) === undefined) return;
    if (ordinalOf(own, at, words) === row.length + 1) row.push(at);
  });
  if (row.length < 2) return [];
  // "Eight on the third, and then I wasn't sure, and I got eight": one more.
  const more = own.findIndex((statement, at) => at > (row.at(-1) ?? 0) && statement.about === "working" && repsOf(statement) !== undefined);
  const { from = 0 } = own[more] ?? {};
  return more >= 0 && DONE.test(words[from - 1]?.plain ?? "") ? [...row, more] : row;
}

/**
 * The places of figures, where reps told in turn are a set each, and the plan of as many sets told before them is none.
 * @param own - of one exercise, in order; @param places - as they were heard
 */
export function toldInTurn(own: readonly Ordered[], places: readonly number[], words: readonly Word[]): number[] {
  const told = rowOf(own, words);
  const row = told.length > 0 ? told : runOf(own, words);
  const first = row[0];
  if (first === undefined) return [...places];
  const out = [...places];
  const plan = own.slice(0, first).findLastIndex(isSeveral);
  // Four sets of which two are told one by one are still four.
  if (plan >= 0 && (own[plan]?.says.sets ?? 0) > row.length + 1) return out;
  const isPlanned = (at: number): boolean => plan >= 0 && at < first && at >= plan - 1 && repsOf(own[at] as Ordered) !== undefined;
  out.forEach((_, at) => {
    if (at === plan || isPlanned(at)) out[at] = ASIDE;
  });
  for (const at of row) {
    // A weight told right before the reps begins the set.
    const before = own[at - 1];
    const leads = before?.says.load !== undefined && out[at - 1] === BEGINS;
    out[at] = leads ? GOES_ON : BEGINS;
  }
  return out;
}
