import { compareWorth, NOTHING, plus, type Worth } from "./demand";
import { toMicros, wholeWeights } from "./exact";
import { restCosts } from "./floor";
import { allowsSet } from "./allows";
import type { CoverageBlock, CoverageStand, Want } from "./types";

/** States kept after each set. Blocks as they are written stay far below it; only beyond it the plan may miss the best. */
const MOST_STATES = 50_000;

/** Marks under the cameras, as indices; -1 is a mark that has to be left. */
type Place = readonly number[];

interface State {
  readonly place: Place;
  /** Which of the wants that several sets could film have been filmed, a bit each. */
  readonly filmed: bigint;
  readonly worth: Worth;
  readonly cost: number;
  readonly moves: number;
  /** Cameras that stand where they stood before the block. */
  readonly kept: number;
  readonly before: State | null;
}

const isBetter = (a: State, b: State): boolean => (compareWorth(a.worth, b.worth) || b.cost - a.cost || b.moves - a.moves || a.kept - b.kept) > 0;

/** What standing at a mark during a set films. */
interface Gain {
  /** Wants that only this set can film: they need no memory. */
  readonly now: Worth;
  /** Wants that other sets could film as well. */
  readonly bits: bigint;
}

const NO_GAIN: Gain = { now: NOTHING, bits: 0n };

interface Block {
  readonly marks: readonly string[];
  readonly gain: (set: number, mark: number) => Gain;
  /** Does the mark have anything to film in this set or later? */
  readonly isOpen: (set: number, mark: number, filmed: bigint) => boolean;
  readonly worthOf: (bits: bigint) => Worth;
}

function read(block: CoverageBlock, cameras: readonly (string | null)[]): Block {
  const isMust = (mark: string): boolean => block.wants.some((want) => want.mark === mark && want.need === "must");
  const wanted = [...new Set(block.wants.map(({ mark }) => mark))];
  // What is needed most is filmed early; a mark that only a camera stands at comes last and is never walked to.
  const marks = [...new Set([...wanted.filter(isMust), ...wanted, ...cameras.flatMap((mark) => mark ?? [])])];
  const weights = wholeWeights(block.wants.map(({ weight }) => weight));
  const worths: Worth[] = [];
  const gains = block.sets.map(() => marks.map((): { now: Worth; bits: bigint } => ({ ...NO_GAIN })));
  const openBits = block.sets.map(() => marks.map(() => 0n));
  const lastAlone = marks.map(() => -1);
  const bitOf = new Map<string, number>();

  block.wants.forEach((want: Want, w) => {
    const worth: Worth = want.need === "must" ? { musts: 1, weight: 0n } : { musts: 0, weight: weights[w] ?? 0n };
    const sets = block.sets.flatMap((set, s) => (allowsSet(want, set) ? [s] : []));
    const mark = marks.indexOf(want.mark);
    if (sets.length === 1) {
      const gain = gains[sets[0] ?? 0]?.[mark];
      if (gain) gain.now = plus(gain.now, worth);
      lastAlone[mark] = Math.max(lastAlone[mark] ?? -1, sets[0] ?? -1);
    } else if (sets.length > 1) {
      // Wants of one mark that the same sets could film are one.
      const key = `${mark} ${sets.join(" ")}`;
      const bit = bitOf.get(key) ?? worths.push(NOTHING) - 1;
      bitOf.set(key, bit);
      worths[bit] = plus(worths[bit] ?? NOTHING, worth);
      for (const set of sets) {
        const gain = gains[set]?.[mark];
        if (gain) gain.bits |= 1n << BigInt(bit);
      }
      const last = sets.at(-1) ?? 0;
      for (let set = 0; set <= last; set++) {
        const row = openBits[set];
        if (row) row[mark] = (row[mark] ?? 0n) | (1n << BigInt(bit));
      }
    }
  });
  return {
    marks,
    gain: (set, mark) => gains[set]?.[mark] ?? NO_GAIN,
    isOpen: (set, mark, filmed) => (lastAlone[mark] ?? -1) >= set || ((openBits[set]?.[mark] ?? 0n) & ~filmed) !== 0n,
    worthOf: (bits) => worths.reduce((sum, worth, bit) => (bits & (1n << BigInt(bit)) ? plus(sum, worth) : sum), NOTHING),
  };
}

/** The state after filming a set from where the cameras stand. */
function filming(state: State, set: number, { gain, worthOf }: Block): State {
  let { worth, filmed } = state;
  let fresh = 0n;
  for (const mark of new Set(state.place)) {
    const { now, bits } = gain(set, mark);
    worth = plus(worth, now);
    fresh |= bits & ~filmed;
  }
  if (fresh !== 0n) worth = plus(worth, worthOf(fresh));
  filmed |= fresh;
  return { ...state, worth, filmed };
}

/** Where the cameras may stand for a set: still, or at other marks that have something to film; a mark that has to be left is left. */
function places(state: State, set: number, { marks, isOpen }: Block): Place[] {
  const open = marks.flatMap((_, mark) => (isOpen(set, mark, state.filmed) ? [mark] : []));
  let found: number[][] = [[]];
  for (const from of state.place) {
    const goals = from < 0 ? [...open, ...marks.map((_, mark) => mark).filter((mark) => !open.includes(mark))] : [from, ...open.filter((mark) => mark !== from)];
    found = found.flatMap((place) => goals.map((mark) => [...place, mark]));
  }
  // A second camera beside the first films nothing more; it stands there only when it did before or there is no other mark.
  return found.filter((place) => new Set(place).size === place.length || place.every((mark, camera) => mark === state.place[camera]) || marks.length < place.length);
}

/** The first set-up: any marks, each camera at another one as long as there are marks. */
function starts(cameras: number, { marks }: Block): Place[] {
  let found: number[][] = [[]];
  for (let camera = 0; camera < cameras; camera++) found = found.flatMap((place) => marks.map((_, mark) => [...place, mark]));
  return found.filter((place) => new Set(place).size === Math.min(place.length, marks.length));
}

/**
 * Where the cameras stand in a block some of whose wants name the sets they are for.
 *
 * Dynamic programming over the sets; a state is the marks under the cameras and which wants of several possible sets are filmed.
 * A want of one possible set is filmed there or lost, so it needs no memory: that keeps states few. Exact up to 50 000 states a set.
 * @param keep - marks the cameras stand at from the block before, at the same station; decides among equal plans
 */
export function namedStands(cameras: number, moveMicros: number, block: CoverageBlock, keep: readonly (string | null)[]): CoverageStand[] {
  const begun = block.begun && Array.from({ length: cameras }, (_, camera) => block.begun?.marks[camera] ?? null);
  const own = read(block, begun ?? []);
  if (own.marks.length === 0) return [];
  const costs = [block.begun?.restSeconds ?? 0, ...block.sets.map(({ restSeconds }) => restSeconds)].map((rest) => restCosts(cameras, moveMicros, toMicros(rest)));
  const empty: Omit<State, "place"> = { filmed: 0n, worth: NOTHING, cost: 0, moves: 0, kept: 0, before: null };

  const enter = (into: Map<string, State>, state: State): void => {
    const key = `${state.place.join(" ")}|${state.filmed}`;
    const known = into.get(key);
    if (!known || isBetter(state, known)) into.set(key, state);
  };
  const walk = (into: Map<string, State>, from: State, set: number): void => {
    for (const place of places(from, set, own)) {
      const moves = place.filter((mark, camera) => mark !== from.place[camera]).length;
      enter(into, filming({ ...from, place, cost: from.cost + (costs[set]?.[moves] ?? 0), moves: from.moves + moves, before: from }, set, own));
    }
  };

  let layer = new Map<string, State>();
  if (begun) walk(layer, { ...empty, place: begun.map((mark) => (mark === null ? -1 : own.marks.indexOf(mark))) }, 0);
  else for (const place of starts(cameras, own)) enter(layer, filming({ ...empty, place, kept: place.filter((mark, camera) => own.marks[mark] === keep[camera]).length }, 0, own));
  for (let set = 1; set < block.sets.length; set++) {
    const next = new Map<string, State>();
    for (const state of layer.values()) walk(next, state, set);
    layer = next.size <= MOST_STATES ? next : new Map([...next].sort(([, a], [, b]) => (isBetter(a, b) ? -1 : isBetter(b, a) ? 1 : 0)).slice(0, MOST_STATES));
  }

  let best: State | null = null;
  for (const state of layer.values()) if (!best || isBetter(state, best)) best = state;
  const chain: State[] = [];
  for (let state = best; state; state = state.before) chain.unshift(state);
  return chain.slice(begun ? 1 : 0).flatMap(({ place }, s) => place.map((mark, camera): CoverageStand => ({ set: block.sets[s]?.id ?? "", camera: camera + 1, mark: own.marks[mark] ?? "" })));
}
