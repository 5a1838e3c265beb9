import { wholeWeights } from "./exact";
import { SET_KINDS, type CoverageBlock, type SetKind, type Want } from "./types";

/**
 * What a mark still has to be filmed on, as a number: bit 1 a ramp-up set, bit 2 a working set, bit 4 a demonstration,
 * 0 nothing more, and ANY_SET when one set of whatever kind will do.
 * A want of kind "any" beside others at its mark needs no code: whatever films them films it.
 */
export type Pattern = number;
export const DONE: Pattern = 0;
export const ANY_SET: Pattern = 8;
/** One more than the largest pattern. */
export const PATTERNS = 9;

/** A mark the camera must leave and films nothing from: the angle is lost. Stands in a camera's place, never among the marks. */
export const MUST_LEAVE: Pattern = 9;

const BITS: Readonly<Record<SetKind, number>> = { ramp: 1, working: 2, demo: 4 };
export const bitOf = (kind: SetKind): number => BITS[kind];

/** What is still to be filmed from a mark after one set of that kind has been. */
export const afterFilming = (pattern: Pattern, bit: number): Pattern => (pattern >= ANY_SET ? (pattern === ANY_SET ? DONE : pattern) : pattern & ~bit);

/** What filming is worth: musts first, then the weight of nice wants. */
export interface Worth {
  readonly musts: number;
  readonly weight: bigint;
}

export const NOTHING: Worth = { musts: 0, weight: 0n };
export const plus = (a: Worth, b: Worth): Worth => ({ musts: a.musts + b.musts, weight: a.weight + b.weight });
export const compareWorth = (a: Worth, b: Worth): number => a.musts - b.musts || (a.weight < b.weight ? -1 : a.weight > b.weight ? 1 : 0);

/** What filming a want is worth. @param weight - as a whole number, of the block's common scale */
export const worthOfWant = ({ need }: Want, weight: bigint | undefined): Worth => (need === "must" ? { musts: 1, weight: 0n } : { musts: 0, weight: weight ?? 0n });

/** A mark and what its wants are worth by the kind of set they ask for; wants of one kind are one class. */
export interface MarkDemand {
  readonly mark: string;
  readonly any: Worth;
  readonly kinds: Readonly<Record<SetKind, Worth>>;
}

/** The block's marks: those with a must first, so that what is needed most is filmed early; else in the order of the wants. */
export function demandsOf(block: CoverageBlock): MarkDemand[] {
  const weights = wholeWeights(block.wants.map(({ weight }) => weight));
  const marks = new Map<string, { any: Worth; kinds: Record<SetKind, Worth> }>();
  block.wants.forEach((want, i) => {
    const demand = marks.get(want.mark) ?? { any: NOTHING, kinds: { ramp: NOTHING, working: NOTHING, demo: NOTHING } };
    const worth = worthOfWant(want, weights[i]);
    if (want.kind === "any") demand.any = plus(demand.any, worth);
    else demand.kinds[want.kind] = plus(demand.kinds[want.kind], worth);
    marks.set(want.mark, demand);
  });
  const all = [...marks].map(([mark, demand]) => ({ mark, ...demand }));
  const hasMust = ({ any, kinds }: MarkDemand): boolean => any.musts > 0 || SET_KINDS.some((kind) => kinds[kind].musts > 0);
  return [...all.filter(hasMust), ...all.filter((demand) => !hasMust(demand))];
}

/** Worth of filming a mark by a pattern. */
export function worthOf(demand: MarkDemand, pattern: Pattern): Worth {
  if (pattern === DONE) return NOTHING;
  return SET_KINDS.reduce((sum, kind) => (pattern & bitOf(kind) ? plus(sum, demand.kinds[kind]) : sum), demand.any);
}
