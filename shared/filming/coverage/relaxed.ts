import type { Floor } from "./floor";

/** Cost in extra microseconds and moves; neither is ever more than what a real plan takes. */
export interface Ahead {
  readonly cost: number;
  readonly moves: number;
}

/** In the easier problem a mark asks for the one kind (NEEDS), for any set (ANY) or for nothing more (FREE). */
const [FREE, NEEDS, ANY] = [0, 1, 2];

/** Cameras as a number: of one camera 0-2, of two 0-8. */
const campOf = (one: number, two: number): number => one + 3 * two;

/**
 * The least that is still to come when only one kind of set is asked for: every mark that needs another kind as well is content with any set.
 * Whatever films the real marks films these, so the result bounds the real problem; it is solved exactly, backwards from the last set.
 * @param bit - the kind; @param marks - how many marks there are
 */
export function relaxedBy(floor: Floor, bit: number, marks: number): (set: number, needing: number, any: number, one: number, two: number) => Ahead {
  const { cameras } = floor;
  const side = marks + 1;
  const camps = cameras === 1 ? 3 : 9;
  const size = side * side * camps;
  const at = (needing: number, any: number, camp: number): number => (needing * side + any) * camps + camp;
  const costs = floor.sets.map(() => new Float64Array(size).fill(Infinity));
  const moves = floor.sets.map(() => new Float64Array(size).fill(Infinity));

  for (let set = floor.sets.length - 1; set >= 0; set--) {
    const [costNow, movesNow, costNext, movesNext] = [costs[set], moves[set], costs[set + 1], moves[set + 1]];
    if (!costNow || !movesNow) continue;
    const films = floor.sets[set] === bit;
    const after = (camp: number): number => (camp === ANY || (films && camp === NEEDS) ? FREE : camp);
    const rest = floor.rests[set] ?? [];
    for (let needing = 0; needing < side; needing++) {
      for (let any = 0; needing + any < side; any++) {
        for (let camp = 0; camp < camps; camp++) {
          const [one, two] = [after(camp % 3), cameras === 1 ? FREE : after(Math.floor(camp / 3))];
          const here = at(needing, any, camp);
          if (!costNext || !movesNext) {
            if (needing + any === 0 && one === FREE && two === FREE) costNow[here] = movesNow[here] = 0;
            continue;
          }
          let least = Infinity;
          let fewest = Infinity;
          for (let to1 = 0; to1 < 3; to1++) {
            // 0 stands for staying.
            if (to1 === NEEDS && one === NEEDS) continue;
            for (let to2 = 0; to2 < (cameras === 1 ? 1 : 3); to2++) {
              if (to2 === NEEDS && two === NEEDS) continue;
              const needingNext = needing - Number(to1 === NEEDS) - Number(to2 === NEEDS) + Number(to1 > 0 && one === NEEDS) + Number(to2 > 0 && two === NEEDS);
              const anyNext = any - Number(to1 === ANY) - Number(to2 === ANY);
              if (needingNext < 0 || anyNext < 0 || needingNext + anyNext >= side) continue;
              const walks = Number(to1 > 0) + Number(to2 > 0);
              const next = at(needingNext, anyNext, cameras === 1 ? to1 || one : campOf(to1 || one, to2 || two));
              const cost = (rest[walks] ?? 0) + (costNext[next] ?? Infinity);
              const count = walks + (movesNext[next] ?? Infinity);
              if (cost < least || (cost === least && count < fewest)) [least, fewest] = [cost, count];
            }
          }
          costNow[here] = least;
          movesNow[here] = fewest;
        }
      }
    }
  }
  return (set, needing, any, one, two) => {
    const here = at(needing, any, cameras === 1 ? one : campOf(one, two));
    return { cost: costs[set]?.[here] ?? Infinity, moves: moves[set]?.[here] ?? Infinity };
  };
}
