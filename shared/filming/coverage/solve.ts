import { boundsOf } from "./bounds";
import { demandsOf, DONE, MUST_LEAVE, PATTERNS, type MarkDemand, type Pattern } from "./demand";
import { toMicros } from "./exact";
import { floorOf, restCosts } from "./floor";
import { standsOf } from "./place";
import { cheapestSchedule, type Begun, type Schedule } from "./schedule";
import { bestTargets, type Target } from "./targets";
import type { CoverageBlock, CoveragePlan, CoverageProblem, CoverageStand } from "./types";
import { coverageCost, shotsFrom } from "./verify";

/** The target's marks by pattern, less those a camera of a begun block already stands at. */
function countsOf(demands: readonly MarkDemand[], target: Target, begun: CoverageBlock["begun"], standing: readonly (string | null)[]): { counts: number[]; under: Pattern[] } {
  const counts = new Array<number>(PATTERNS).fill(0);
  demands.forEach(({ mark }, i) => {
    const pattern = target[i] ?? DONE;
    if (pattern !== DONE && !(begun && standing.includes(mark))) counts[pattern] = (counts[pattern] ?? 0) + 1;
  });
  const under = standing.map((mark, camera) => {
    if (mark === null) return MUST_LEAVE;
    const index = demands.findIndex((demand) => demand.mark === mark);
    return index < 0 || standing.indexOf(mark) < camera ? DONE : (target[index] ?? DONE);
  });
  return { counts, under };
}

/** Where the cameras stand in one block; nowhere when nothing is wanted or no set is left. */
function blockStands(cameras: number, moveMicros: number, block: CoverageBlock): CoverageStand[] {
  const demands = demandsOf(block);
  if (demands.length === 0 || block.sets.length === 0) return [];
  const places = { ramp: 0, working: 0, demo: 0 };
  for (const { kind } of block.sets) places[kind] += cameras;
  const floor = floorOf(cameras, block.sets, block.sets.map(({ restSeconds }) => toMicros(restSeconds)), moveMicros);
  const standing = block.begun ? Array.from({ length: cameras }, (_, camera) => block.begun?.marks[camera] ?? null) : [];

  const bounds = boundsOf(floor, demands.length + cameras);
  let best: { readonly target: Target; readonly schedule: Schedule } | null = null;
  for (const target of bestTargets(demands, places, standing)) {
    const { counts, under } = countsOf(demands, target, block.begun, standing);
    const begun: Begun | null = block.begun ? { standing: under, costs: restCosts(cameras, moveMicros, toMicros(block.begun.restSeconds)) } : null;
    const schedule = cheapestSchedule(floor, bounds, counts, begun, best?.schedule ?? { cost: Infinity, moves: Infinity });
    if (schedule) best = { target, schedule };
  }
  if (!best) throw new Error(`blockStands found no plan for block "${block.id}".`);
  return standsOf(block.sets, demands, best.target, best.schedule, block.begun ? standing : null);
}

/**
 * Which mark films which set: most musts, then most weight of nice wants, then least extra seconds, then fewest moves.
 *
 * Exact: no plan is better. In two steps a block: what can be filmed at best is a matter of counting camera places (`targets.ts`),
 * and how to film that most cheaply is a search over the sets (`schedule.ts`) in which marks that ask for the same kinds of set are alike.
 * Weights are compared as they are written, seconds to the microsecond; nothing is compared in floating point.
 *
 * Ties: marks with a must before others, then in the order of the wants; the first camera before the second. Names play no part.
 * A camera without a task stands at the first mark that is free, else at the first mark. A block without wants has no stands.
 * Stations and their changes do not enter: blocks are independent, and the first set-up in each is free.
 */
export function planCoverage(problem: CoverageProblem): CoveragePlan {
  const moveMicros = toMicros(problem.moveSeconds);
  const byBlock = problem.blocks.map((block) => ({ block, stands: blockStands(problem.cameras, moveMicros, block) }));
  const stands = byBlock.flatMap((each) => each.stands);
  const shots = byBlock.flatMap((each) => shotsFrom(each.block, each.stands));
  const filmed = new Set(shots.map(({ want }) => want));
  const lost = problem.blocks.flatMap(({ wants }) => wants.filter(({ id }) => !filmed.has(id)).map(({ id }) => id));
  return { stands, shots, lost, ...coverageCost(problem, stands) };
}
