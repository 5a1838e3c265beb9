import { compareWorth, NOTHING, plus, type Worth } from "./demand";
import { toMicros } from "./exact";
import { restCosts } from "./floor";
import { cheapestMoves, hopeOf } from "./hope";
import { namedGains, type NamedGains } from "./named-gains";
import type { CoverageBlock, CoverageStand } from "./types";

/** States kept after each set, pass by pass: what the quick ones find bounds the last one, which keeps all that can still be better. */
const WIDTHS = [32, 1024, 60_000];

/** Marks under the cameras, as indices; -1 is a mark that has to be left. */
type Place = readonly number[];

/** What plans are compared by. */
interface Value {
  readonly worth: Worth;
  readonly cost: number;
  readonly moves: number;
  /** Cameras that stand where they stood before the block. */
  readonly kept: number;
}

interface State extends Value {
  readonly place: Place;
  /** Which of the wants that several sets could film have been filmed, a bit each. */
  readonly filmed: bigint;
  readonly before: State | null;
}

/** Better ones first. */
const order = (a: Value, b: Value): number => compareWorth(b.worth, a.worth) || a.cost - b.cost || a.moves - b.moves || b.kept - a.kept;
const isBetter = (a: Value, b: Value): boolean => order(a, b) < 0;

/** The state after filming a set from where the cameras stand. */
function filming(state: State, set: number, { gain, worthOf }: NamedGains): State {
  let { worth } = state;
  let fresh = 0n;
  for (const mark of new Set(state.place)) {
    const { now, bits } = gain(set, mark);
    worth = plus(worth, now);
    fresh |= bits & ~state.filmed;
  }
  return { ...state, worth: fresh === 0n ? worth : plus(worth, worthOf(fresh)), filmed: state.filmed | fresh };
}

/** Where the cameras may stand for a set: still, or at other marks that have something to film; a mark that has to be left is left. */
function places(state: State, set: number, { marks, isOpen }: NamedGains): Place[] {
  const open = marks.flatMap((_, mark) => (isOpen(set, mark, state.filmed) ? [mark] : []));
  // Of equal plans the one found first stays: moves are tried before standing still, so that what can go wrong goes wrong early.
  let found: number[][] = [[]];
  for (const from of state.place) {
    const goals = from < 0 ? [...open, ...marks.map((_, mark) => mark).filter((mark) => !open.includes(mark))] : [...open.filter((mark) => mark !== from), from];
    found = found.flatMap((place) => goals.map((mark) => [...place, mark]));
  }
  // A second camera beside the first films nothing more; it stands there only when it did before or there is no other mark.
  return found.filter((place) => new Set(place).size === place.length || place.every((mark, camera) => mark === state.place[camera]) || marks.length < place.length);
}

/** The first set-up: any marks, each camera at another one as long as there are marks. Cameras are alike, unless they already stand somewhere. */
function starts(cameras: number, { marks }: NamedGains, areAlike: boolean): Place[] {
  let found: number[][] = [[]];
  for (let camera = 0; camera < cameras; camera++) found = found.flatMap((place) => marks.map((_, mark) => [...place, mark]));
  return found.filter((place) => new Set(place).size === Math.min(place.length, marks.length) && (!areAlike || place.every((mark, camera) => camera === 0 || mark >= (place[camera - 1] ?? 0))));
}

/**
 * Where the cameras stand in a block some of whose wants name the sets they are for.
 *
 * Dynamic programming over the sets; a state is the marks under the cameras and which wants of several possible sets are filmed.
 * A want of one possible set is filmed there or lost, so it needs no memory: that keeps states few. A state that cannot become better
 * than what a quick pass found is dropped. Exact as long as 60 000 states a set are enough, which blocks as they are written stay far below.
 * @param keep - marks the cameras stand at from the block before, at the same station; decides among equal plans
 */
export function namedStands(cameras: number, moveMicros: number, block: CoverageBlock, keep: readonly (string | null)[]): CoverageStand[] {
  const begun = block.begun && Array.from({ length: cameras }, (_, camera) => block.begun?.marks[camera] ?? null);
  const own = namedGains(block, begun ?? []);
  const costs = [block.begun?.restSeconds ?? 0, ...block.sets.map(({ restSeconds }) => restSeconds)].map((rest) => restCosts(cameras, moveMicros, toMicros(rest)));
  const hope = hopeOf(own, cameras, block.sets.length, cheapestMoves(costs.slice(1, block.sets.length)));
  const empty: Omit<State, "place"> = { filmed: 0n, worth: NOTHING, cost: 0, moves: 0, kept: 0, before: null };

  const pass = (width: number, beat: State | null): State | null => {
    let isWhole = true;
    const enter = (into: Map<string, { state: State; most: Value }>, state: State, set: number): void => {
      const key = `${state.place.join(" ")}|${state.filmed}`;
      const known = into.get(key);
      if (known && !isBetter(state, known.state)) return;
      const most = { ...hope(set, state), kept: state.kept };
      if (!beat || isBetter(most, beat)) into.set(key, { state, most });
    };
    const walk = (into: Map<string, { state: State; most: Value }>, from: State, set: number): void => {
      for (const place of places(from, set, own)) {
        const moves = place.filter((mark, camera) => mark !== from.place[camera]).length;
        enter(into, filming({ ...from, place, cost: from.cost + (costs[set]?.[moves] ?? 0), moves: from.moves + moves, before: from }, set, own), set);
      }
    };
    const narrow = (states: Map<string, { state: State; most: Value }>): State[] => {
      const all = [...states.values()];
      if (all.length > width) {
        isWhole = false;
        all.sort((a, b) => order(a.most, b.most) || order(a.state, b.state));
      }
      return all.slice(0, width).map(({ state }) => state);
    };

    const first = new Map<string, { state: State; most: Value }>();
    if (begun) walk(first, { ...empty, place: begun.map((mark) => (mark === null ? -1 : own.marks.indexOf(mark))) }, 0);
    else for (const place of starts(cameras, own, keep.length === 0)) enter(first, filming({ ...empty, place, kept: place.filter((mark, camera) => own.marks[mark] === keep[camera]).length }, 0, own), 0);
    let layer = narrow(first);
    for (let set = 1; set < block.sets.length; set++) {
      const next = new Map<string, { state: State; most: Value }>();
      for (const state of layer) walk(next, state, set);
      layer = narrow(next);
    }
    isFinished = isWhole;
    return layer.reduce<State | null>((best, state) => (!best || isBetter(state, best) ? state : best), null);
  };

  let isFinished = false;
  let best: State | null = null;
  for (const width of WIDTHS) {
    best = pass(width, best) ?? best;
    if (isFinished) break;
  }
  const chain: State[] = [];
  for (let state = best; state; state = state.before) chain.unshift(state);
  return chain.slice(begun ? 1 : 0).flatMap(({ place }, s) => place.map((mark, camera): CoverageStand => ({ set: block.sets[s]?.id ?? "", camera: camera + 1, mark: own.marks[mark] ?? "" })));
}
