import { ANY_SET, PATTERNS } from "./demand";
import type { Floor } from "./floor";
import { relaxedBy, type Ahead } from "./relaxed";

export interface Bounds {
  /**
   * The least that is still to come from the moment the cameras stand for a set; infinite when something would be left unfilmed.
   * @param counts - marks without a camera, by pattern; @param standing - patterns under the cameras
   */
  readonly ahead: (set: number, counts: readonly number[], standing: readonly number[]) => Ahead;
}

const BITS = [1, 2, 4];
const NEVER: Ahead = { cost: Infinity, moves: Infinity };

/** Two bounds: the camera places that are left, by kind; and, for each kind, the easier problem in which only that kind is asked for. */
export function boundsOf(floor: Floor, marks: number): Bounds {
  const relaxed = BITS.map((bit) => relaxedBy(floor, bit, marks));
  const placesFrom = BITS.map((bit) => floor.sets.map((_, start) => floor.cameras * floor.sets.slice(start).filter((kind) => kind === bit).length));

  return {
    ahead(set, counts, standing) {
      let unfilmed = 0;
      for (let pattern = 1; pattern < PATTERNS; pattern++) unfilmed += counts[pattern] ?? 0;
      let needed = counts[ANY_SET] ?? 0;
      for (const pattern of standing) if (pattern === ANY_SET) needed++;
      let least: Ahead = { cost: 0, moves: 0 };
      for (let k = 0; k < BITS.length; k++) {
        const bit = BITS[k] ?? 0;
        const camp = (pattern = 0): number => (pattern === 0 || pattern > ANY_SET ? 0 : pattern < ANY_SET && pattern & bit ? 1 : 2);
        let needing = 0;
        for (let pattern = 1; pattern < ANY_SET; pattern++) if (pattern & bit) needing += counts[pattern] ?? 0;
        const [one, two] = [camp(standing[0]), camp(standing[1])];
        const kindNeeded = needing + Number(one === 1) + Number(two === 1);
        if (kindNeeded > (placesFrom[k]?.[set] ?? 0)) return NEVER;
        needed += kindNeeded;
        const bound = relaxed[k]?.(set, needing, unfilmed - needing, one, two) ?? NEVER;
        if (bound.cost > least.cost || (bound.cost === least.cost && bound.moves > least.moves)) least = bound;
      }
      return needed > floor.cameras * (floor.sets.length - set) ? NEVER : least;
    },
  };
}
