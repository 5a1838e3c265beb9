import { attended } from "../listener/meant";
import { holding } from "../listener/holding";
import type { Listened } from "../listener/listen";
import type { Listener } from "../listener/weights";
import { kindOf, type Scene } from "./scene";

/** For each statement the numbers of the exercises it holds for: the one in whose time it is said, another, several, none. */
export function ownersIn({ exercises, statements, words }: Scene, listened: Listened, listener: Listener): number[][] {
  const figures = statements.map((statement) => ({ from: statement.from, kind: kindOf(statement), value: JSON.stringify(statement.says) }));
  const sought = exercises.map(({ turn }, place) => ({ at: turn, pooled: attended(listened, turn, exercises[place + 1]?.turn ?? words.length, listener) }));
  return holding(listened, figures, sought, listener);
}
