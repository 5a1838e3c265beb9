import { plainIn } from "../source/words";
import type { Word } from "../types";
import type { Ordered } from "./compose";

/** "So I took twenty kilos off": by how much a weight changed is no weight. */

const CHANGED = /^(?:(?:kilos?|kgs?|kilograms?|pounds?|lbs?) )?(?:off|(?:more|less) (?:than|on)|heavier|lighter|down from|up from)(?: |$)/;

/** The figures without those that tell by how much the weight changed, where the weight itself is told as well. @param own - of one exercise, in order */
export function withoutChanges(own: readonly Ordered[], words: readonly Word[]): readonly Ordered[] {
  const isChange = ({ says, to }: Ordered): boolean => typeof says.load?.value === "number" && CHANGED.test(plainIn(words, to + 1, to + 4).join(" "));
  const rest = own.filter((statement) => !isChange(statement));
  return rest.some(({ says }) => typeof says.load?.value === "number") ? rest : own;
}
