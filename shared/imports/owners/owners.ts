import { holding } from "../listener/holding";
import type { Listened } from "../listener/listen";
import { homeOf, kindOf, type Scene } from "./scene";

/** For each statement the numbers of the exercises it holds for: the one in whose time it is said, another, several, none. */
export function ownersIn({ exercises, statements, words }: Scene, listened: Listened): number[][] {
  const figures = statements.map((statement) => ({ from: statement.from, kind: kindOf(statement), value: JSON.stringify(statement.says) }));
  const heard = holding(listened, figures, exercises.map(({ turn }, place) => ({ at: turn, until: exercises[place + 1]?.turn ?? words.length })));
  // A figure that was passed over is of nothing by what was heard.
  return heard.map((own, at) => {
    const home = homeOf(exercises, statements[at]?.from ?? 0);
    return own.length === 0 && statements[at]?.isInferred && home >= 0 ? [home] : own;
  });
}
