import { plainIn } from "../source/words";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** What was done is told again: "seventy now, eight, that was seventy for eight"; "nine, seven, five, that's twenty-one push-ups". */

const AGAIN = /(?:^| )(?:that was|that's|that is|so that's|call it|call that|call that one)$/;
/** So many words are between a weight and its reps. */
const NEAR = 4;

const loadOf = ({ says }: Ordered): string | undefined => (says.load === undefined ? undefined : String(says.load.value));

const TOTAL = /(?:^| )(?:that's|that is|that was|makes|made|so|total(?: of)?|altogether|came to|comes to)$/;

/** From so many on a number told twice is rather a weight than reps. */
const HEAVY = 30;

/** The figures without a number of reps that is the sum of those told before it, or a weight told before. */
function withoutTotals(own: readonly Ordered[], words: readonly Word[]): readonly Ordered[] {
  return own.filter(({ says, from }, at) => {
    // "And that hundred is for all four sets": the weight, told again.
    if (says.repsMin !== undefined && says.repsMin >= HEAVY && /^(?:that|the|this)$/.test(words[from - 1]?.plain ?? "") && own.slice(0, at).some((other) => other.says.load?.value === says.repsMin)) return false;
    const before = own.slice(0, at).flatMap(({ says: said }) => (said.repsMin !== undefined && said.repsMin === said.repsMax ? [said.repsMin] : []));
    const isSum = before.length > 1 && says.repsMin !== undefined && says.repsMin === before.reduce((sum, reps) => sum + reps, 0);
    return !(isSum && TOTAL.test(plainIn(words, from - 3, from).join(" ")));
  });
}

/** The figures without the weight and reps of a set that is told again right after it. @param own - of one exercise, in order */
export function toldOnce(own: readonly Ordered[], words: readonly Word[]): readonly Ordered[] {
  const again = new Set<Ordered>();
  own.forEach((statement, at) => {
    const next = own[at + 1];
    const [load, reps] = [loadOf(statement), next?.says.repsMin];
    if (load === undefined || !next || reps === undefined || next.from - statement.to > NEAR || !AGAIN.test(plainIn(words, statement.from - 3, statement.from).join(" "))) return;
    const before = own.slice(0, at);
    const last = before.findLastIndex((other) => loadOf(other) !== undefined);
    if (last >= 0 && loadOf(before[last] as Ordered) === load && before.findLast(({ says }) => says.repsMin !== undefined)?.says.repsMin === reps && before.slice(last).some(({ says }) => says.repsMin === reps)) for (const told of [statement, next]) again.add(told);
  });
  return withoutTotals(own.filter((statement) => !again.has(statement)), words);
}
