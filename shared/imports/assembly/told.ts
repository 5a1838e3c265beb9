import type { RowModel } from "../learning/row-model";
import type { Ordered } from "../schemes/compose";
import type { Word } from "../types";
import { toldAgain } from "./again";
import { placesOf } from "./assembly";
import { toldInTurn } from "./in-turn";
import { inPairs } from "./pairs";
import { weightsInTurn, type Told } from "./weights-in-turn";

/** The figures of one exercise, each with its place in the set lines: as the model has learned, then as sets are told one by one. @param own - in order */
export function toldOneByOne(own: readonly Ordered[], words: readonly Word[], model: RowModel): Told {
  const pairs = inPairs(own, placesOf(own, words, model));
  const again = toldAgain(own, pairs, words);
  return weightsInTurn(own, toldInTurn(own, again, words), words);
}
