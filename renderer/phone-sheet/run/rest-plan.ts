import { coverageCost, coverageViolations, planCoverage, type CoverageBlock, type CoveragePlan, type CoverageProblem } from "../../../shared/filming";
import { angleKey, openShots, type Finder, type Run } from "./state";

/** Shots that are over, or being filmed, and not answered: they count as filmed until somebody says no. */
function waitingShots(run: Run): Set<string> {
  const underWay = run.running ? (run.films.get(run.running.set)?.shots ?? []).filter((shot) => !run.answers.has(shot)) : [];
  return new Set([...openShots(run).map(({ shot }) => shot), ...underWay]);
}

/** How far the block is in which the cameras stand; nothing for another one, which is set up anew. */
function begunOf(find: Finder, run: Run, block: string): CoverageBlock["begun"] {
  if (run.cameras?.block !== block) return undefined;
  const { marks } = run.cameras;
  const last = run.running?.set ?? run.resting?.after;
  return {
    marks: Array.from({ length: find.session.problem.cameras }, (_, camera) => {
      const mark = marks[camera];
      return mark === undefined || run.lostAngles.has(angleKey(block, mark)) ? null : mark;
    }),
    restSeconds: last === undefined ? 0 : find.set(last).restSeconds,
  };
}

/**
 * What is left of the session as a coverage problem. A shot that has missed the sets it names may be filmed on any set of their kind that
 * is left; the block the cameras stand in has begun, so its next move counts.
 */
function restProblem(find: Finder, run: Run, waiting: ReadonlySet<string>): CoverageProblem {
  const { problem } = find.session;
  let isFirst = true;
  const blocks = run.order.flatMap((id): CoverageBlock[] => {
    const block = problem.blocks.find((each) => each.id === id);
    if (!block || run.taken.get(id) === "dropped") return [];
    const sets = block.sets.filter((set) => !run.over.has(set.id) && set.id !== run.running?.set);
    if (sets.length === 0) return [];
    const isLeft = new Set(sets.map((set) => set.id));
    const wants = block.wants
      .filter((want) => !waiting.has(want.id) && run.answers.get(want.id)?.got !== true && !run.lostAngles.has(angleKey(id, want.mark)))
      .map((want) => {
        const { sets: named, ...free } = want;
        if (named === undefined || named.length === 0 || named.some((set) => isLeft.has(set))) return want;
        return { ...free, kind: block.sets.find((set) => set.id === named[0])?.kind ?? want.kind };
      });
    const begun = isFirst ? begunOf(find, run, id) : undefined;
    isFirst = false;
    return [{ id, station: block.station, changeSeconds: block.changeSeconds, sets, wants, ...(begun ? { begun } : {}) }];
  });
  return { ...problem, blocks };
}

/** The plan before as far as it is still ahead, as a plan of this problem; null when it does not fit any more. */
function remainder(problem: CoverageProblem, before: CoveragePlan): CoveragePlan | null {
  const sets = new Set(problem.blocks.flatMap((block) => block.sets.map(({ id }) => id)));
  const wants = problem.blocks.flatMap((block) => block.wants.map(({ id }) => id));
  const stands = before.stands.filter(({ set }) => sets.has(set));
  const shots = before.shots.filter(({ want, set }) => sets.has(set) && wants.includes(want));
  const filmed = new Set(shots.map(({ want }) => want));
  const plan = { stands, shots, lost: wants.filter((id) => !filmed.has(id)), ...coverageCost(problem, stands) };
  return coverageViolations(problem, plan).length === 0 ? plan : null;
}

/** Whether two plans of one problem film as much at the same cost. */
function areEqual(problem: CoverageProblem, one: CoveragePlan, other: CoveragePlan): boolean {
  const wants = new Map(problem.blocks.flatMap((block) => block.wants.map((want) => [want.id, want] as const)));
  const worth = ({ shots, extraSeconds, moves }: CoveragePlan): string => {
    const filmed = shots.flatMap(({ want }) => wants.get(want) ?? []);
    const nice = filmed.filter(({ need }) => need === "nice").map(({ weight }) => weight).sort((a, b) => a - b);
    return [filmed.length - nice.length, nice.join("+"), extraSeconds, moves].join();
  };
  return worth(one) === worth(other);
}

function bestPlan(problem: CoverageProblem, run: Run): CoveragePlan {
  // Most answers change nothing that is left.
  if (JSON.stringify(problem) === JSON.stringify(run.problem)) return run.plan;
  const best = planCoverage(problem);
  const kept = remainder(problem, run.plan);
  return kept && areEqual(problem, kept, best) ? kept : best;
}

/**
 * What is left, and its plan by the same engine as at the desk. Of equally good plans the one on paper stays, so that the phone
 * never contradicts it without need. `lost` names every shot of the session that is neither in the box, nor waiting, nor planned.
 */
export function planOfRest(find: Finder, run: Run): { readonly problem: CoverageProblem; readonly plan: CoveragePlan } {
  const waiting = waitingShots(run);
  const problem = restProblem(find, run, waiting);
  const plan = bestPlan(problem, run);
  const filmed = new Set([...plan.shots.map(({ want }) => want), ...waiting]);
  const lost = find.session.blocks.flatMap(({ shots }) => shots.filter(({ id }) => !filmed.has(id) && run.answers.get(id)?.got !== true).map(({ id }) => id));
  return { problem, plan: { ...plan, lost } };
}
