import type { Candidate } from "../order/candidates";
import { edgeOf } from "../learning/feature-names";
import { keyOf } from "../names/lexicon";
import { meaningOf, signsOf, type Listened } from "./listen";
import { beside, rowAt, rowsOf } from "./matrix";
import { softmax, through, twice } from "./network";

/** What the speaker turns to. */

/** In words. */
export const AWAY = [0, 2, 5, 10, 20, 40, 80, 160, 320];
/** So many words after a turn are heard for what it turns to. */
const REACH = 120;
/** A name may begin so many words before its turn. */
const BEFORE = 2;

const awayOf = (words: number): number => (words < 0 ? 0 : 1 + edgeOf(words, AWAY));

/** What is told from a turn on, by the attention its words draw: several listen for other things each, their answers one after the other. @param until - the next turn, in words */
export function attended({ meaning, input, listener }: Listened, turn: number, until: number): Float32Array {
  const from = Math.max(0, turn - BEFORE);
  const span = Array.from({ length: Math.max(1, Math.min(until, turn + REACH, meaning.rows) - from) }, (_, at) => from + at);
  const heard = rowsOf(meaning, span);
  const [inner, outer] = listener.attend;
  const hidden = through(heard, inner);
  const scores = through({ ...hidden, values: hidden.values.map(Math.tanh) }, outer);
  const told = through(beside(heard, rowsOf(input, span)), listener.told);
  const each = told.columns / scores.columns;
  const pooled = new Float32Array(told.columns);
  for (let head = 0; head < scores.columns; head += 1) {
    const attention = softmax(span.map((word, at) => (rowAt(scores, at)[head] ?? 0) + (rowAt(listener.attendAway, awayOf(word - turn))[head] ?? 0)));
    attention.forEach((share, at) => { for (let column = head * each; column < (head + 1) * each; column += 1) pooled[column] = (pooled[column] as number) + share * (rowAt(told, at)[column] as number); });
  }
  return pooled;
}

/** What a turn turns to. */
export interface Meant {
  /** The name that tells it best; null where none stands in reach. */
  readonly named: Candidate | null;
  /** How likely each exercise is that the listener knows: its share of one, by its key; "?" is whatever else. */
  readonly shares: ReadonlyMap<string, number>;
}

/** What is meant at a turn, by what is said and named from there on. @param until - the next turn, in words */
export function meantAt(listened: Listened, candidates: readonly Candidate[], turn: number, until: number): Meant {
  const { listener } = listened;
  const near = candidates.filter(({ span }) => span.to - 1 >= turn - BEFORE && span.from < Math.min(until, turn + REACH));
  const places = near.map(({ span }) => span.from);
  const pointers = twice(beside(meaningOf(listened, near), signsOf(near), rowsOf(listener.pointerAway, places.map((at) => awayOf(at - turn)))), listener.pointer).values;
  const pooled = attended(listened, turn, until);
  const scores = twice({ rows: 1, columns: pooled.length, values: pooled }, listener.goal).values;
  near.forEach((candidate, at) => {
    const goal = listener.numbers.goals.get(keyOf(candidate.name)) ?? 0;
    scores[goal] = (scores[goal] ?? 0) + Math.log1p(Math.exp(pointers[at] ?? 0));
  });
  const shares = softmax(scores);
  return { named: near[pointers.indexOf(Math.max(...pointers))] ?? null, shares: new Map([...listener.numbers.goals.keys()].map((id, at) => [id, shares[at] ?? 0])) };
}

/** The likeliest of the exercises that the listener knows, by its key. */
export const likeliest = ({ shares }: Meant): { readonly key: string; readonly share: number } =>
  [...shares].reduce((best, [key, share]) => (key !== "?" && share > best.share ? { key, share } : best), { key: "", share: 0 });
