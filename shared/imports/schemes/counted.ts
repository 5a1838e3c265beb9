import { isNumberWord } from "../../speech";
import type { Word } from "../types";
import type { Ordered } from "./compose";
import { UNIT_NOT_SAID } from "./extras";


/** Numbers in the plural that are reps and no weights. */

/** Words that make a number in the plural a weight: "the tens", "tens in each hand". */
const [TAKEN, HELD] = [/^(?:the|those|these|my|with|of|got|using|use|took|take|grab|pair|two|holding|at)$/, /^(?:hands?|dumbbells?|kettlebells?|bells?|arms?)$/];
/** So many words around it are looked at. */
const BY = 6;

/** "Eights on these, so eight reps": a number in the plural that is counted as well, and that no word makes a weight. It is none where nothing is held, beside another weight, and right before its reps. */
export function isCounted(statement: Ordered, own: readonly Ordered[], words: readonly Word[], isWeighted: boolean): boolean {
  const value = statement.says.load?.value;
  const { from, to, remark } = statement;
  if (remark !== UNIT_NOT_SAID || typeof value !== "number" || !/\ws$/.test(words[to]?.plain ?? "")) return false;
  if (TAKEN.test(words[from - 1]?.plain ?? "") || words.slice(Math.max(0, from - BY), to + BY).some(({ plain }) => HELD.test(plain))) return false;
  // "Tens for twelve": reps follow their weight.
  if (words[to + 1]?.plain === "for" && isNumberWord(words[to + 2]?.plain ?? "")) return false;
  const isBeside = own.some(({ says, about }) => about !== "ramp-up" && says.load !== undefined && says.load.value !== value);
  return own.some(({ says, from: place }) => says.repsMin === value && (!isWeighted || isBeside || (place > to && place <= to + BY)));
}
