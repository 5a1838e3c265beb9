import type { Candidate } from "../order/candidates";
import { ROLES, upperOf } from "../roles/tagger";
import type { Word } from "../types";
import { inputsOf, isHeardAlone, phrasedAt, type Sounds } from "./inputs";
import { added, beside, matrixFrom, rowAt, rowsOf, type Matrix } from "./matrix";
import { layered, sharesOf, sigmoid, through, twice } from "./network";
import type { Listener } from "./weights";

/** Speech as it was listened to, and by whom. */
export interface Listened {
  readonly listener: Listener;
  /** What was known of each word before. */
  readonly input: Matrix;
  /** What each word comes to mean among all the others. */
  readonly meaning: Matrix;
}

/** When so many layers have heard a speech, what they would say already is told to those above them. */
const GUESS = 2;

/** Scores of the roles of figures. @param places - their words */
const roleScores = ({ listener, input, meaning }: Listened, places: readonly number[]): Matrix => twice(beside(rowsOf(meaning, places), rowsOf(input, places)), listener.role);
/** Scores of nothing, an exercise and the other parts that are turned to, at every word. */
const turnScores = ({ listener, meaning }: Listened): Matrix => twice(meaning, listener.turn);

/** What would be said already of figures and turns, as something to be heard (Nozaki and Komatsu, 2021, "Relaxing the conditional independence assumption"). @param places - the words of figures */
function guessed(listened: Listened, places: readonly number[]): Matrix {
  const turns = sharesOf(turnScores(listened));
  const own = sharesOf(roleScores(listened, places));
  const roles: Matrix = { rows: turns.rows, columns: ROLES.length, values: new Float32Array(turns.rows * ROLES.length) };
  places.forEach((place, at) => rowAt(roles, place).set(rowAt(own, at)));
  return through(beside(roles, turns), listened.listener.guessed);
}

/** Listens to a whole speech. @param onProgress - is told the share of the work that is done */
export function listenTo(speech: Sounds, listener: Listener, onProgress: (share: number) => void): Listened {
  const phrased = phrasedAt(speech.heard);
  const input = inputsOf(speech, phrased, listener);
  const figures = phrased.map(({ word }) => word);
  const alone = figures.filter((_, at) => isHeardAlone(figures, at, speech.words));
  const meaning = layered(input, listener.layers, (heard, done) => {
    onProgress(done / listener.layers.length);
    return done === GUESS ? added(heard, guessed({ listener, input, meaning: heard }, alone)) : heard;
  });
  return { listener, input, meaning };
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
export function rolesHeard(listened: Listened, places: readonly number[], words: readonly Word[]): (Float32Array | null)[] {
  const shares = sharesOf(roleScores(listened, places));
  const alone = places.map((_, at) => isHeardAlone(places, at, words));
  return places.map((word, at) => {
    if (alone[at]) return rowAt(shares, at);
    return alone[at - 1] && places[at - 1] === word ? upperShares(rowAt(shares, at)) : null;
  });
}

/** What is known of a name besides its words. */
export function signsOf(candidates: readonly Candidate[]): Matrix {
  const rows = candidates.map(({ isThing, strength, passing, listed, paired }) => [isThing, strength === 1, strength === 2, passing, listed, paired].map(Number));
  return matrixFrom(rows, 6);
}

/** What the names mean: their first and last words. */
export const meaningOf = ({ meaning }: Listened, names: readonly Candidate[]): Matrix =>
  beside(rowsOf(meaning, names.map(({ span }) => span.from)), rowsOf(meaning, names.map(({ span }) => Math.min(span.to, meaning.rows) - 1)));

/** How likely each name begins an exercise of the session, from 0 to 1. */
export const startsHeard = (listened: Listened, candidates: readonly Candidate[]): Float32Array =>
  twice(beside(meaningOf(listened, candidates), signsOf(candidates)), listened.listener.start).values.map(sigmoid);

/** Words so far on either side may have been taken for the same turn. */
const HALF = 6;
/** The shares of a turn in so many words must come to this. */
const SURE = 0.5;
/** So much where another turn is close by. */
const CLOSE = 0.75;

/** Takes a turn's shares away: its own, then those around it, the nearest first, until they come to one; what is more belongs to another turn. */
function settle(left: Float32Array, turn: number): void {
  let settled = 0;
  for (let away = 0; away <= 2 * HALF; away += 1) for (const at of away === 0 ? [turn] : [turn - away, turn + away]) {
    const share = left[at] ?? 0;
    if (settled + share > 1) continue;
    settled += share;
    if (at in left) left[at] = 0;
  }
}

/** A word at which the speaker turns to an exercise, and how surely: the shares of the words around it together, about 1 at most. */
export interface Turning {
  readonly at: number;
  readonly share: number;
}

/** Where the speaker turns to exercises, in order: where the shares of some words together are largest, at the likeliest of them. */
export function turnsHeard(listened: Listened): Turning[] {
  const shares = sharesOf(turnScores(listened));
  const left = Float32Array.from({ length: shares.rows }, (_, row) => rowAt(shares, row)[1] ?? 0);
  const sumAt = (at: number): number => left.slice(Math.max(0, at - HALF), at + HALF + 1).reduce((sum, share) => sum + share, 0);
  const around = Float64Array.from(left, (_, at) => sumAt(at));
  const turns: Turning[] = [];
  for (;;) {
    const best = around.reduce((top, sum, at) => (sum > (around[top] ?? 0) ? at : top), 0);
    if (!((around[best] ?? 0) > SURE)) return turns.sort((a, b) => a.at - b.at);
    const [from, to] = [Math.max(0, best - HALF), Math.min(left.length, best + HALF + 1)];
    const near = left.slice(from, to);
    const turn = from + near.indexOf(Math.max(...near));
    const isClose = turns.some(({ at }) => Math.abs(at - turn) <= 2 * HALF);
    if (isClose && (around[best] ?? 0) < CLOSE) left.fill(0, from, to);
    else {
      turns.push({ at: turn, share: around[best] ?? 0 });
      settle(left, turn);
    }
    for (let at = Math.max(0, turn - 3 * HALF); at <= Math.min(left.length - 1, turn + 3 * HALF); at += 1) around[at] = sumAt(at);
  }
}
