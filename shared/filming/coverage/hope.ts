import { compareWorth, plus, type Worth } from "./demand";
import type { NamedGains } from "./named-gains";

interface Known {
  readonly place: readonly number[];
  readonly filmed: bigint;
  readonly worth: Worth;
  readonly cost: number;
  readonly moves: number;
}

/**
 * The least extra time of so many moves from a rest on, whichever they are: `cheapestMoves(rests)[rest][moves]`, infinite when they do not fit.
 * @param rests - cost of 0, 1, 2 moves in each rest
 */
export function cheapestMoves(rests: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const least: number[][] = [[0]];
  for (const costs of [...rests].reverse()) {
    const later = least[0] ?? [0];
    const now = new Array<number>(later.length + costs.length - 1).fill(Infinity);
    later.forEach((cost, moves) => costs.forEach((more, here) => void (now[moves + here] = Math.min(now[moves + here] ?? Infinity, cost + more))));
    least.unshift(now);
  }
  return least;
}

/**
 * The most a state can still become: every mark that is open is filmed as far as there are camera places, at the price of the moves that takes at least.
 * @returns worth, cost and moves at the end, none of which any plan from here on beats together
 */
export function hopeOf({ marks, openWorth }: NamedGains, cameras: number, sets: number, cheapest: readonly (readonly number[])[]) {
  return (set: number, { place, filmed, worth, cost, moves }: Known): { worth: Worth; cost: number; moves: number } => {
    const next = set + 1;
    if (next >= sets) return { worth, cost, moves };
    const open = marks.flatMap((_, mark) => {
      const each = openWorth(next, mark, filmed);
      return each.musts > 0 || each.weight > 0n ? [{ each, isHere: place.includes(mark) }] : [];
    });
    // Each mark takes a camera place at least, also the one a camera stays at; what is worth most goes first.
    const visited = open.map(({ each }) => each).sort((a, b) => compareWorth(b, a)).slice(0, cameras * (sets - next));
    const walks = Math.max(0, visited.length - open.filter(({ isHere }) => isHere).length);
    return {
      worth: visited.reduce(plus, worth),
      cost: cost + (cheapest[set]?.[walks] ?? Infinity),
      moves: moves + walks,
    };
  };
}
