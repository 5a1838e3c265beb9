import type { Bounds } from "./bounds";
import { afterFilming, DONE, MUST_LEAVE, PATTERNS, type Pattern } from "./demand";
import type { Floor } from "./floor";

/** A camera walks from a mark with one pattern left to a mark with another. */
export interface Walk {
  readonly from: Pattern;
  readonly to: Pattern;
}

export interface Schedule {
  /** Patterns of the marks the cameras stand at first. */
  readonly start: readonly Pattern[];
  /** The walks before each set; those before the first only in a block that has begun. */
  readonly walks: readonly (readonly Walk[])[];
  readonly cost: number;
  readonly moves: number;
}

/** Where a block that has begun stands: the patterns under its cameras, and what moves cost in the rest that is running. */
export interface Begun {
  readonly standing: readonly Pattern[];
  readonly costs: readonly number[];
}

interface State {
  /** Marks without a camera, by what is still to be filmed from them. */
  readonly counts: readonly number[];
  /** What is still to be filmed from the marks under the cameras, in order of size: cameras are alike. */
  readonly standing: readonly Pattern[];
  readonly cost: number;
  readonly moves: number;
  readonly before: State | null;
  readonly walks: readonly Walk[];
}

/** A state and the least it can come to in the end. */
interface Ranked {
  readonly state: State;
  readonly total: Value;
}

type Value = Pick<State, "cost" | "moves">;

const isLess = (a: Value, b: Value): boolean => a.cost < b.cost || (a.cost === b.cost && a.moves < b.moves);
const sorted = (patterns: readonly Pattern[]): Pattern[] => [...patterns].sort((a, b) => a - b);

/** States kept after each set, pass by pass: what the quick ones find bounds the last one, which keeps all. */
const WIDTHS = [32, 512, Infinity];

/** Every way the cameras can walk in one rest, standing still first; each walk ends where something is left to film. */
function waysToWalk(counts: readonly number[], standing: readonly Pattern[]): Walk[][] {
  let ways: Walk[][] = [[]];
  standing.forEach((from, camera) => {
    ways = ways.flatMap((walks) => {
      const more: Walk[][] = from === MUST_LEAVE ? [[...walks, { from, to: DONE }]] : [walks];
      for (let to = 1; to < PATTERNS; to++) {
        const taken = walks.filter((walk) => walk.to === to).length;
        // Alike cameras may exchange their walks: the first one's is the smaller.
        const mirrored = camera > 0 && standing[camera - 1] === from && (walks[camera - 1]?.to ?? PATTERNS) > to;
        if (to !== from && !mirrored && (counts[to] ?? 0) > taken) more.push([...walks, { from, to }]);
      }
      return more;
    });
  });
  return ways;
}

function walked(state: State, counts: readonly number[], standing: readonly Pattern[], walks: readonly Walk[], costs: readonly number[]): State {
  const left = [...counts];
  const now = [...standing];
  for (const { from, to } of walks) {
    now[now.indexOf(from)] = MUST_LEAVE + 1;
    if (from !== DONE && from !== MUST_LEAVE) left[from] = (left[from] ?? 0) + 1;
    if (to !== DONE) left[to] = (left[to] ?? 0) - 1;
  }
  let next = 0;
  const arrived = sorted(now.map((pattern) => (pattern === MUST_LEAVE + 1 ? (walks[next++]?.to ?? DONE) : pattern)));
  return { counts: left, standing: arrived, cost: state.cost + (costs[walks.length] ?? 0), moves: state.moves + walks.length, before: state, walks };
}

/** Where the cameras may be set up first, each at another mark as long as there are marks. */
function starts(counts: readonly number[], cameras: number): State[] {
  let open: { counts: number[]; standing: Pattern[] }[] = [{ counts: [...counts], standing: [] }];
  for (let camera = 0; camera < cameras; camera++) {
    open = open.flatMap((start) => {
      const choices = start.counts.flatMap((count, pattern) => (count > 0 && pattern >= (start.standing.at(-1) ?? 0) ? [pattern] : []));
      return (choices.length > 0 ? choices : start.counts.some((count) => count > 0) ? [] : [DONE]).map((pattern) => ({
        counts: start.counts.map((count, i) => (i === pattern ? Math.max(0, count - 1) : count)),
        standing: [...start.standing, pattern],
      }));
    });
  }
  return open.map((start) => ({ counts: start.counts, standing: sorted(start.standing), cost: 0, moves: 0, before: null, walks: [] }));
}

function scheduleOf(last: State, hasBegun: boolean): Schedule {
  const chain: State[] = [];
  for (let state: State | null = last; state; state = state.before) chain.push(state);
  chain.reverse();
  // A block that has begun has one state more: the cameras before the first walk.
  return { start: chain[0]?.standing ?? [], walks: chain.slice(hasBegun ? 1 : 0).map(({ walks }) => walks), cost: last.cost, moves: last.moves };
}

/**
 * The cheapest way to film marks by their patterns: least extra time, then fewest moves.
 *
 * Dynamic programming over the sets. A camera only ever walks to a mark from which something is left to film and where no other
 * camera stands: leaving any other walk out, or letting the other camera make it, never costs more, because a rest with fewer moves
 * is never dearer. First passes that keep few states give a cost to beat; the last keeps every state that may still beat it.
 *
 * @param counts - how many marks have each pattern, cameras of a begun block not counted
 * @param beat - only something cheaper is worth finding
 * @returns null when nothing is cheaper than `beat`
 */
export function cheapestSchedule(floor: Floor, { ahead }: Bounds, counts: readonly number[], begun: Begun | null, beat: Value): Schedule | null {
  let dropped: boolean;
  const pass = (width: number, limit: Value): Schedule | null => {
    const enter = (into: Map<string, Ranked>, state: State, set: number): void => {
      const least = ahead(set, state.counts, state.standing);
      const total = { cost: state.cost + least.cost, moves: state.moves + least.moves };
      if (total.cost === Infinity || !isLess(total, limit)) return;
      const key = `${state.counts.join(" ")}|${state.standing.join("")}`;
      const known = into.get(key);
      if (!known || isLess(state, known.state)) into.set(key, { state, total });
    };
    const narrow = (states: Map<string, Ranked>): State[] => {
      const all = [...states.values()];
      if (all.length > width) {
        dropped = true;
        all.sort((a, b) => a.total.cost - b.total.cost || a.total.moves - b.total.moves);
      }
      return all.slice(0, width).map(({ state }) => state);
    };

    const first = new Map<string, Ranked>();
    if (begun) {
      const standing = sorted(begun.standing);
      const now: State = { counts, standing, cost: 0, moves: 0, before: null, walks: [] };
      for (const walks of waysToWalk(counts, standing)) enter(first, walked(now, counts, standing, walks, begun.costs), 0);
    } else {
      // Of equal plans the one found first stays, so starts that film at once are tried first.
      const filming = ({ standing }: State): number => standing.filter((pattern) => afterFilming(pattern, floor.sets[0] ?? 0) !== pattern).length;
      for (const state of starts(counts, floor.cameras).sort((a, b) => filming(b) - filming(a))) enter(first, state, 0);
    }
    let layer = narrow(first);

    for (let set = 0; set < floor.sets.length - 1; set++) {
      const next = new Map<string, Ranked>();
      for (const state of layer) {
        const standing = sorted(state.standing.map((pattern) => afterFilming(pattern, floor.sets[set] ?? 0)));
        for (const walks of waysToWalk(state.counts, standing)) enter(next, walked(state, state.counts, standing, walks, floor.rests[set] ?? []), set + 1);
      }
      layer = narrow(next);
    }
    // A state that entered the last set leaves nothing unfilmed: its bound would have been infinite.
    const best = layer.reduce<State | null>((least, state) => (!least || isLess(state, least) ? state : least), null);
    return best && scheduleOf(best, begun !== null);
  };

  let best: Schedule | null = null;
  for (const width of WIDTHS) {
    dropped = false;
    best = pass(width, best ?? beat) ?? best;
    if (!dropped) break;
  }
  return best;
}
