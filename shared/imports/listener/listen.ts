import type { Candidate } from "../order/candidates";
import { ROLES, upperOf } from "../roles/tagger";
import type { Word } from "../types";
import { inputsOf, isHeardAlone, type Sounds } from "./inputs";
import { beside, rowAt, rowsOf, type Matrix } from "./matrix";
import { layered, sigmoid, softmax, twice } from "./network";
import type { Listener } from "./weights";

/** Speech as it was listened to, and by whom. */
export interface Listened {
  readonly listener: Listener;
  /** What was known of each word before. */
  readonly input: Matrix;
  /** What each word comes to mean among all the others. */
  readonly meaning: Matrix;
}

/** Listens to a whole speech. @param onProgress - is told the share of the work that is done */
export function listenTo(speech: Sounds, listener: Listener, onProgress: (share: number) => void): Listened {
  const input = inputsOf(speech, listener);
  return { listener, input, meaning: layered(input, listener.layers, (done) => onProgress(done / listener.layers.length)) };
}

/** The shares of the upper figure of a range by those of the lower one. */
function upperShares(lower: Float32Array): Float32Array {
  const upper = new Float32Array(lower.length);
  lower.forEach((share, role) => {
    const own = ROLES.indexOf(upperOf(ROLES[role] ?? "none"));
    upper[own] = (upper[own] ?? 0) + share;
  });
  return upper;
}

/** How likely each role is of the figures at some words, in order: shares of one, by their number in ROLES; null for those of "3x8". */
export function rolesHeard({ listener, input, meaning }: Listened, places: readonly number[], words: readonly Word[]): (Float32Array | null)[] {
  const scores = twice(beside(rowsOf(meaning, places), rowsOf(input, places)), listener.role);
  const alone = places.map((_, at) => isHeardAlone(places, at, words));
  return places.map((word, at) => {
    const shares = softmax(rowAt(scores, at));
    if (alone[at]) return shares;
    return alone[at - 1] && places[at - 1] === word ? upperShares(shares) : null;
  });
}

/** What is known of a name besides its words. */
export function signsOf(candidates: readonly Candidate[]): Matrix {
  const rows = candidates.map(({ isThing, strength, passing, listed, paired }) => [isThing, strength === 1, strength === 2, passing, listed, paired].map(Number));
  return { rows: rows.length, columns: 6, values: Float32Array.from(rows.flat()) };
}

/** What the names mean: their first and last words. */
export const meaningOf = ({ meaning }: Listened, names: readonly Candidate[]): Matrix =>
  beside(rowsOf(meaning, names.map(({ span }) => span.from)), rowsOf(meaning, names.map(({ span }) => Math.min(span.to, meaning.rows) - 1)));

/** How likely each name begins an exercise of the session, from 0 to 1. */
export const startsHeard = (listened: Listened, candidates: readonly Candidate[]): Float32Array =>
  twice(beside(meaningOf(listened, candidates), signsOf(candidates)), listened.listener.start).values.map(sigmoid);

/** Words so far on either side of a turn may have been taken for it. */
const HALF = 6;
/** The shares of a turn in so many words must come to this. */
const SURE = 0.35;

/** The words at which the speaker turns to exercises, in order: where the shares of some words together are largest, at the likeliest of them. */
export function turnsHeard({ listener, meaning }: Listened): number[] {
  const scores = twice(meaning, listener.turn);
  const left = Float32Array.from({ length: scores.rows }, (_, row) => softmax(rowAt(scores, row))[1] ?? 0);
  const sumAt = (at: number): number => left.slice(Math.max(0, at - HALF), at + HALF + 1).reduce((sum, share) => sum + share, 0);
  const around = Float64Array.from(left, (_, at) => sumAt(at));
  const turns: number[] = [];
  for (;;) {
    const best = around.reduce((top, sum, at) => (sum > (around[top] ?? 0) ? at : top), 0);
    if (!((around[best] ?? 0) > SURE)) return turns.sort((a, b) => a - b);
    const [from, to] = [Math.max(0, best - HALF), Math.min(left.length, best + HALF + 1)];
    const near = left.slice(from, to);
    turns.push(from + near.indexOf(Math.max(...near)));
    left.fill(0, from, to);
    for (let at = Math.max(0, from - HALF); at < Math.min(left.length, to + HALF); at += 1) around[at] = sumAt(at);
  }
}
