import { decode, scoreOf, type RowModel } from "../learning/row-model";
import type { Candidate } from "../order/candidates";
import type { Indexed } from "../order/speech";
import { wayTo } from "./features";

/** Before the turn, the turn, after it. */
export const TURN_LABELS = 3;
export const TURN = 1;

/** The candidates that begin exercises, in order. */
export const inOrder = (starts: ReadonlySet<Candidate>): Candidate[] => [...starts].sort((a, b) => a.span.from - b.span.from);

/** The word at which the speaker turns to each exercise that begins, by the word its name begins at; its name where no other word is likelier. */
export function turnsIn(speech: Indexed, starts: ReadonlySet<Candidate>, model: RowModel): Map<number, number> {
  const turns = new Map<number, number>();
  let from = 0;
  for (const candidate of inOrder(starts)) {
    const { places, features, steps } = wayTo(speech, candidate, from);
    const labels = decode(features.map((names) => scoreOf(model, names)), steps, model);
    turns.set(candidate.span.from, places[labels.indexOf(TURN)] ?? candidate.span.from);
    from = candidate.span.to;
  }
  return turns;
}
