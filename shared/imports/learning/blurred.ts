import type { Candidate } from "../order/candidates";
import type { Begun } from "../order/speech";
import type { Lesson } from "./read";
import { startsMarked } from "./starts";

/** Turns of a marked transcript, some lost and some found where none is: as many as the listener misses in new speech. */
const [LOST, FALSE] = [0.08, 0.08];

/** From 0 to 1, the same ones every time (a linear congruential generator, constants of Numerical Recipes). */
function chances(seed: number): () => number {
  let state = (seed * 7919 + 1) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** A turn whose exercise nothing names. */
const unnamed = (at: number): Candidate => ({ name: { title: "", exercise: null, words: [], letters: "", sound: "", everyday: false }, span: { from: at, to: at + 1 }, sentence: 0, sure: 1, strength: 2, passing: false, isThing: true, listed: false, paired: false, takenBack: false });

/** @param seed - the transcript's number */
export function blurred({ ready: { candidates }, turns }: Lesson, seed: number): Begun[] {
  const chance = chances(seed);
  const starts = startsMarked(candidates, turns);
  const kept = turns.flatMap(({ at }, place): Begun[] => (chance() < LOST ? [] : [{ turn: at, candidate: starts[place] ?? unnamed(at) }]));
  const others = candidates.filter((candidate) => candidate.isThing && !candidate.passing && !starts.includes(candidate));
  const odds = (FALSE * turns.length) / Math.max(1, others.length);
  const wrong = others.flatMap((candidate): Begun[] => (chance() < odds ? [{ turn: candidate.span.from, candidate }] : []));
  return [...kept, ...wrong].sort((a, b) => a.turn - b.turn);
}
