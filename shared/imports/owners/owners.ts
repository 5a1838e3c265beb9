import { holding } from "../listener/holding";
import type { Listened } from "../listener/listen";
import { kindOf, type Scene } from "./scene";

/** For each statement the numbers of the exercises it holds for: the one in whose time it is said, another, several, none. */
export function ownersIn({ exercises, statements, words }: Scene, listened: Listened): number[][] {
  const figures = statements.map((statement) => ({ from: statement.from, kind: kindOf(statement), value: JSON.stringify(statement.says) }));
  return holding(listened, figures, exercises.map(({ turn }, place) => ({ at: turn, until: exercises[place + 1]?.turn ?? words.length })));
}
