import { unnamed } from "../order/candidates";
import type { Begun } from "../order/speech";
import { chances } from "./chances";
import type { Lesson } from "./read";
import { startsMarked } from "./starts";

/** Turns of a marked transcript, some lost and some found where none is: as many as the listener misses in new speech. */
const [LOST, FALSE] = [0.08, 0.08];

/** No name that anybody said. */
const NOTHING = { title: "", exercise: null, words: [], letters: "", sound: "", everyday: false };

/** @param seed - the transcript's number */
export function blurred({ ready: { candidates }, turns }: Lesson, seed: number): Begun[] {
  const chance = chances(seed * 7919 + 1);
  const starts = startsMarked(candidates, turns);
  const kept = turns.flatMap(({ at }, place): Begun[] => (chance() < LOST ? [] : [{ turn: at, candidate: starts[place] ?? { ...unnamed(at), name: NOTHING } }]));
  const others = candidates.filter((candidate) => candidate.isThing && !candidate.passing && !starts.includes(candidate));
  const odds = (FALSE * turns.length) / Math.max(1, others.length);
  const wrong = others.flatMap((candidate): Begun[] => (chance() < odds ? [{ turn: candidate.span.from, candidate }] : []));
  return [...kept, ...wrong].sort((a, b) => a.turn - b.turn);
}
