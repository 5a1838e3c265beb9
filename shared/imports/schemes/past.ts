import { plainIn } from "../source/words";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** Figures of another day: "I worked up to one forty last week, so today one ten". */

const DAY = String.raw`(?:yesterday|last (?:week|time|month|year|session)|(?:a|two|three|few) (?:weeks|months|years) ago)`;
const BEHIND = new RegExp(String.raw`(?:^| )${DAY}(?= (?:so|but|today|now|and today|and now)(?: |$))`);
const BEFORE = new RegExp(String.raw`(?:^| )${DAY}(?: (?:i|we|it|that|was|were|did|had|used|got|with|at|only))*$`);
/** What is of today, whatever was said before. "Last week it was forty" begins what is told of last week. */
const TODAY = /(?:^| )(?:today|now|so|but|this time|than|same|as|up from|which|that)(?: |$)/;
/** So many words behind a weight the day may be said, so many before it. */
const [FAR, NEAR] = [12, 6];

/** The figures without a weight of another day, where one of today is told as well. @param own - of one exercise, in order */
export function ofToday(own: readonly Ordered[], words: readonly Word[]): readonly Ordered[] {
  const loads = own.filter(({ says, about }) => typeof says.load?.value === "number" && about !== "ramp-up");
  const isPast = (statement: Ordered): boolean => {
    const next = loads.find(({ from }) => from > statement.to)?.from ?? words.length;
    const behind = plainIn(words, statement.to + 1, Math.min(next, statement.to + 1 + FAR)).join(" ");
    const day = BEHIND.exec(behind);
    return (day !== null && !TODAY.test(behind.slice(0, day.index))) || BEFORE.test(plainIn(words, statement.from - NEAR, statement.from).join(" "));
  };
  const past = loads.filter(isPast);
  if (past.length === 0 || past.length === loads.length) return own;
  // The reps that were done with it are of that day as well.
  const reps = past.flatMap((load) => own.slice(own.indexOf(load) + 1, own.indexOf(load) + 2).filter(({ says, from }) => says.repsMin !== undefined && from <= load.to + NEAR));
  return own.filter((statement) => !past.includes(statement) && !reps.includes(statement));
}
