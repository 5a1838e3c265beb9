import type { Candidate } from "../order/candidates";
import { edgeOf } from "../learning/feature-names";
import { signsOf, type Listened } from "./listen";
import { beside, rowAt, rowsOf, softmax, through, twice } from "./network";
import type { Listener } from "./weights";

/** What the speaker turns to. */

/** In words. */
export const AWAY = [0, 2, 5, 10, 20, 40, 80, 160, 320];
/** So many words after a turn are heard for what it turns to. */
const REACH = 120;
/** A name may begin so many words before its turn. */
const BEFORE = 2;

const awayOf = (words: number): number => (words < 0 ? 0 : 1 + edgeOf(words, AWAY));

/** The meaning of what is said from a turn on, each word by the attention it draws. @param until - the next turn, in words */
export function attended({ meaning }: Listened, turn: number, until: number, listener: Listener): Float32Array {
  const from = Math.max(0, turn - BEFORE);
  const span = Array.from({ length: Math.max(1, Math.min(until, turn + REACH, meaning.rows) - from) }, (_, at) => from + at);
  const heard = rowsOf(meaning, span);
  const [inner, outer] = listener.attend;
  const hidden = through(heard, inner);
  const scores = through({ ...hidden, values: hidden.values.map(Math.tanh) }, outer).values;
  const attention = softmax(scores.map((score, at) => score + (listener.attendAway.values[awayOf((span[at] ?? 0) - turn)] ?? 0)));
  const pooled = new Float32Array(meaning.columns);
  attention.forEach((share, at) => rowAt(heard, at).forEach((value, column) => { pooled[column] = (pooled[column] ?? 0) + share * value; }));
  return pooled;
}

/** The name that tells best what a turn turns to; null where none stands in reach. @param until - the next turn, in words */
export function nameAt({ meaning }: Listened, candidates: readonly Candidate[], turn: number, until: number, listener: Listener): Candidate | null {
  const near = candidates.filter(({ span }) => span.to - 1 >= turn - BEFORE && span.from < Math.min(until, turn + REACH));
  const places = near.map(({ span }) => span.from);
  const scores = twice(beside(rowsOf(meaning, places), signsOf(near), rowsOf(listener.pointerAway, places.map((at) => awayOf(at - turn)))), listener.pointer).values;
  return near[scores.indexOf(Math.max(...scores))] ?? null;
}

/** The likeliest exercise of the catalogue at a turn that nothing names, by its id, and its share of one. */
export function meantAt(listened: Listened, turn: number, until: number, listener: Listener): { readonly id: string; readonly share: number } {
  const pooled = attended(listened, turn, until, listener);
  // The first goal stands for everything the catalogue lacks.
  const known = softmax(twice({ rows: 1, columns: pooled.length, values: pooled }, listener.goal).values).subarray(1);
  const best = known.indexOf(Math.max(...known));
  return { id: listener.goals[best + 1] ?? "", share: known[best] ?? 0 };
}
