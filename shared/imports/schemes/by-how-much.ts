import { plainIn } from "../source/words";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** "So I took twenty kilos off": by how much a weight changed is no weight. */

const CHANGED = /^(?:(?:kilos?|kgs?|kilograms?|pounds?|lbs?) )?(?:off|(?:more|less) (?:than|on)|heavier|lighter|down from|up from)(?: |$)/;

/** "So we are up two reps". */
const UP_BY = /(?:^| )(?:are|were|we're|i'm|am|is|that's) (?:up|down) (?:by )?$/;

/** The figures without those that tell by how much the weight changed, where the weight itself is told as well. @param own - of one exercise, in order */
export function withoutChanges(own: readonly Ordered[], words: readonly Word[]): readonly Ordered[] {
  const isLoad = ({ says }: Ordered): boolean => typeof says.load?.value === "number";
  const isChange = (statement: Ordered): boolean => isLoad(statement) && CHANGED.test(plainIn(words, statement.to + 1, statement.to + 4).join(" "));
  const isUp = ({ says, from, to }: Ordered): boolean => says.repsMin !== undefined && UP_BY.test(`${plainIn(words, from - 3, from).join(" ")} `) && /^reps?$/.test(words[to + 1]?.plain ?? "");
  const rest = own.filter((statement) => !isChange(statement));
  return (rest.some(isLoad) ? rest : own).filter((statement) => !isUp(statement));
}
