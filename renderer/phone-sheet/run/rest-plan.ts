import { planCoverage, type CoverageBlock, type CoveragePlan, type CoverageProblem } from "../../../shared/filming";
import { angleKey, openShots, type Finder, type Run } from "./state";

/**
 * What is left of the session as a coverage problem, and its plan by the same engine as at the desk.
 *
 * A shot that is over and not answered counts as filmed until somebody says no. One that has missed the sets it names may be filmed on any
 * set of its kind that is left. The block the cameras stand in has begun, so its next move counts.
 */
export function planOfRest(find: Finder, run: Run): { readonly problem: CoverageProblem; readonly plan: CoveragePlan } {
  const { session } = find;
  const waiting = new Set([...openShots(run).map(({ shot }) => shot), ...(run.running ? (run.films.get(run.running.set)?.shots ?? []) : [])]);
  const restOf = new Map(session.blocks.flatMap(({ sets }) => sets.map(({ id, restSeconds }) => [id, restSeconds] as const)));
  const last = run.running?.set ?? run.resting?.after ?? null;
  let isFirst = true;

  const blocks = run.order.flatMap((id): CoverageBlock[] => {
    const block = session.problem.blocks.find((each) => each.id === id);
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
    const marks = run.cameras?.block === id && isFirst ? run.cameras.marks : null;
    isFirst = false;
    const begun = marks && { marks: Array.from({ length: session.problem.cameras }, (_, camera) => { const mark = marks[camera]; return mark === undefined || run.lostAngles.has(angleKey(id, mark)) ? null : mark; }), restSeconds: last === null ? 0 : (restOf.get(last) ?? 0) };
    return [{ id, station: block.station, changeSeconds: block.changeSeconds, sets, wants, ...(begun ? { begun } : {}) }];
  });

  const problem: CoverageProblem = { ...session.problem, blocks };
  // Most answers change nothing that is left; then the plan stands.
  const plan = JSON.stringify(problem) === JSON.stringify(run.problem) ? run.plan : planCoverage(problem);
  const filmed = new Set([...plan.shots.map(({ want }) => want), ...waiting]);
  const lost = session.blocks.flatMap(({ shots }) => shots.filter(({ id }) => !filmed.has(id) && run.answers.get(id)?.got !== true).map(({ id }) => id));
  return { problem, plan: { ...plan, lost } };
}
