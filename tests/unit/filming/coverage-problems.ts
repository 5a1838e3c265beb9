import fc from "fast-check";
import { SET_KINDS, type CoverageBlock, type CoverageProblem, type CoverageSet, type Want } from "../../../shared/filming";

export interface Size {
  readonly blocks: number;
  readonly sets: number;
  readonly wants: number;
  readonly marks: number;
  /** Some wants name the sets they are for. */
  readonly named?: boolean;
}

/** Random small problems: rests about as long as moves, fractions among seconds and weights, kinds that may be missing. */
export function problems(size: Size, cameras: readonly (1 | 2)[] = [1, 2]): fc.Arbitrary<CoverageProblem> {
  const set = fc.record({ kind: fc.constantFrom(...SET_KINDS), restSeconds: fc.constantFrom(0, 20, 30, 44.5, 45, 60, 89.9, 90, 120) });
  const want = fc.record({
    mark: fc.integer({ min: 1, max: size.marks }),
    need: fc.constantFrom("must" as const, "nice" as const),
    weight: fc.constantFrom(0, 0.1, 0.2, 0.3, 1, 1, 2, 2.5),
    kind: fc.constantFrom("any" as const, "any" as const, ...SET_KINDS),
    names: size.named ? fc.option(fc.uniqueArray(fc.nat(size.sets), { minLength: 1, maxLength: 2 }), { nil: null }) : fc.constant(null),
  });
  const block = fc.record({ station: fc.constantFrom("", "bench", "rack"), sets: fc.array(set, { minLength: 1, maxLength: size.sets }), wants: fc.array(want, { maxLength: size.wants }) });
  return fc.record({
    cameras: fc.constantFrom(...cameras),
    moveSeconds: fc.constantFrom(0, 30, 45, 45, 62.5),
    blocks: fc.array(block, { minLength: 1, maxLength: size.blocks }),
  }).map(({ cameras: count, moveSeconds, blocks }) => ({
    cameras: count,
    moveSeconds,
    blocks: blocks.map(({ station, sets, wants }, b): CoverageBlock => ({
      id: `block ${b}`,
      station,
      changeSeconds: 90,
      sets: sets.map((each, s): CoverageSet => ({ id: `set ${b}.${s}`, seconds: 40, ...each })),
      wants: wants.map(({ names, ...each }, w): Want => ({ ...each, id: `want ${b}.${w}`, mark: `mark ${each.mark}`, ...(names ? { sets: names.map((s) => `set ${b}.${s}`) } : {}) })),
    })),
  }));
}

/** Musts, hundredths of weight of nice wants, extra seconds and moves: what a plan is compared by. */
export type Score = readonly [musts: number, weight: number, extraSeconds: number, moves: number];

export function isBetter(a: Score, b: Score): boolean {
  const signs = [1, 1, -1, -1];
  const first = a.findIndex((value, i) => Math.abs(value - (b[i] ?? 0)) > 1e-6);
  return first >= 0 && (signs[first] ?? 0) * ((a[first] ?? 0) - (b[first] ?? 0)) > 0;
}

export function filmedScore(wants: readonly Want[], lost: readonly string[]): readonly [number, number] {
  const filmed = wants.filter(({ id }) => !lost.includes(id));
  return [filmed.filter(({ need }) => need === "must").length, filmed.filter(({ need }) => need === "nice").reduce((sum, { weight }) => sum + Math.round(weight * 100), 0)];
}
