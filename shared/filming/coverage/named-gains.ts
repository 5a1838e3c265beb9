import { allowsSet } from "./allows";
import { NOTHING, plus, worthOfWant, type Worth } from "./demand";
import { wholeWeights } from "./exact";
import type { CoverageBlock } from "./types";

/** What standing at a mark during a set films. */
export interface Gain {
  /** Wants that only this set can film. */
  readonly now: Worth;
  /** Wants that other sets could film as well, a bit each. */
  readonly bits: bigint;
}

/** What can be filmed from where and when in a block whose wants name their sets. Sets and marks are indices. */
export interface NamedGains {
  readonly marks: readonly string[];
  readonly gain: (set: number, mark: number) => Gain;
  /** Does the mark have anything to film in this set or later? */
  readonly isOpen: (set: number, mark: number, filmed: bigint) => boolean;
  /** The most that can be filmed from the mark in this set and later. */
  readonly openWorth: (set: number, mark: number, filmed: bigint) => Worth;
  readonly worthOf: (bits: bigint) => Worth;
}

const NO_GAIN: Gain = { now: NOTHING, bits: 0n };
const isWorth = ({ musts, weight }: Worth): boolean => musts > 0 || weight > 0n;

/** @param standing - marks the cameras of a begun block stand at; they count even if nothing is wanted from them any more */
export function namedGains(block: CoverageBlock, standing: readonly (string | null)[]): NamedGains {
  const isMust = (mark: string): boolean => block.wants.some((want) => want.mark === mark && want.need === "must");
  const wanted = [...new Set(block.wants.map(({ mark }) => mark))];
  // What is needed most is filmed early; a mark that only a camera stands at comes last and is never walked to.
  const marks = [...new Set([...wanted.filter(isMust), ...wanted, ...standing.flatMap((mark) => mark ?? [])])];
  const weights = wholeWeights(block.wants.map(({ weight }) => weight));
  const worths: Worth[] = [];
  const bitOf = new Map<string, number>();
  const gains = block.sets.map(() => marks.map((): Gain => NO_GAIN));
  const openBits = block.sets.map(() => marks.map(() => 0n));
  const openNow = block.sets.map(() => marks.map((): Worth => NOTHING));

  block.wants.forEach((want, w) => {
    const worth = worthOfWant(want, weights[w]);
    const sets = block.sets.flatMap((set, s) => (allowsSet(want, set) ? [s] : []));
    const mark = marks.indexOf(want.mark);
    const first = sets[0];
    const last = sets.at(-1);
    if (first === undefined || last === undefined) return;
    // Wants of one mark that the same sets could film are one.
    const key = `${mark} ${sets.join(" ")}`;
    const bit = sets.length === 1 ? null : (bitOf.get(key) ?? worths.push(NOTHING) - 1);
    if (bit !== null) {
      bitOf.set(key, bit);
      worths[bit] = plus(worths[bit] ?? NOTHING, worth);
    }
    for (const set of sets) {
      const row = gains[set];
      const gain = row?.[mark] ?? NO_GAIN;
      if (row) row[mark] = bit === null ? { ...gain, now: plus(gain.now, worth) } : { ...gain, bits: gain.bits | (1n << BigInt(bit)) };
    }
    for (let set = 0; set <= last; set++) {
      const [bits, now] = [openBits[set], openNow[set]];
      if (bits && bit !== null) bits[mark] = (bits[mark] ?? 0n) | (1n << BigInt(bit));
      if (now && bit === null) now[mark] = plus(now[mark] ?? NOTHING, worth);
    }
  });

  const known = new Map<bigint, Worth>([[0n, NOTHING]]);
  const worthOf = (bits: bigint): Worth => {
    const before = known.get(bits);
    if (before) return before;
    const worth = worths.reduce((sum, each, bit) => (bits & (1n << BigInt(bit)) ? plus(sum, each) : sum), NOTHING);
    known.set(bits, worth);
    return worth;
  };
  const openWorth = (set: number, mark: number, filmed: bigint): Worth => plus(openNow[set]?.[mark] ?? NOTHING, worthOf((openBits[set]?.[mark] ?? 0n) & ~filmed));
  return { marks, gain: (set, mark) => gains[set]?.[mark] ?? NO_GAIN, openWorth, isOpen: (set, mark, filmed) => isWorth(openWorth(set, mark, filmed)), worthOf };
}
