import { plainIn } from "../source/words";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** "One hold, as long as you can, I got fifty-five seconds": what it came to is the set. */

/** So many words behind "as many as you can" it is told what it came to. */
const NEAR = 16;
const CAME_TO = /(?:^| )(?:got|managed|hit|did|made|was|first(?: set| one)?|to)$/;

/** The figures without "as many as you can" where the number it came to is told. @param own - of one exercise, in order */
export function cameTo(own: readonly Ordered[], words: readonly Word[]): readonly Ordered[] {
  const isTold = ({ to }: Ordered): boolean =>
    own.some((other) => (other.says.seconds !== undefined || other.says.repsMin !== undefined) && other.from > to && other.from <= to + NEAR && CAME_TO.test(plainIn(words, other.from - 2, other.from).join(" ")));
  const several = own.some(({ says }) => (says.sets ?? 1) > 1);
  return own.filter((statement, at) => {
    if (statement.says.amrap !== true || !isTold(statement)) return true;
    // Of several sets all must be told: "first 15, second 12".
    const told = own.slice(at + 1).filter(({ says }) => says.repsMin !== undefined).length;
    return several && told < 2;
  });
}
