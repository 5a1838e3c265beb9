import { planCoverage } from "./solve";
import type { CoverageBlock, CoveragePlan, CoverageProblem } from "./types";

/** How far the session is. */
export interface CoverageDone {
  /** The last set that is over; null before the first. Blocks in front of its block are over as well. */
  readonly through: string | null;
  /** Wants that have been filmed. */
  readonly filmed: readonly string[];
  /** Where each camera stands now; empty when no block has begun. */
  readonly marks: readonly string[];
}

/** What has come in between. */
export type CoverageChange =
  | { readonly type: "angle-lost"; readonly block: string; readonly mark: string }
  | { readonly type: "station-taken"; readonly block: string; readonly then: "later" | "dropped" };

export interface Replanned {
  /** The rest of the session, in its new order; can be replanned again. */
  readonly problem: CoverageProblem;
  /** The plan for it. `lost` names every want that is neither filmed nor going to be, also those of blocks that are over or dropped. */
  readonly plan: CoveragePlan;
}

/** How far one is after a set, when all went by the plan. @throws RangeError when the problem has no such set */
export function doneThrough(problem: CoverageProblem, plan: CoveragePlan, through: string): CoverageDone {
  const order = problem.blocks.flatMap(({ sets }) => sets.map(({ id }) => id));
  const at = order.indexOf(through);
  if (at < 0) throw new RangeError(`doneThrough: there is no set "${through}".`);
  const over = new Set(order.slice(0, at + 1));
  return {
    through,
    filmed: plan.shots.filter(({ set }) => over.has(set)).map(({ want }) => want),
    marks: plan.stands.filter(({ set }) => set === through).map(({ mark }) => mark),
  };
}

/** The blocks that are not over, without what is done; the running one has begun. */
function remaining(problem: CoverageProblem, done: CoverageDone): CoverageBlock[] {
  const filmed = new Set(done.filmed);
  const current = done.through === null ? -1 : problem.blocks.findIndex(({ sets }) => sets.some(({ id }) => id === done.through));
  if (done.through !== null && current < 0) throw new RangeError(`replan: there is no set "${done.through}".`);
  return problem.blocks.slice(Math.max(0, current)).flatMap((block, i): CoverageBlock[] => {
    const wants = block.wants.filter(({ id }) => !filmed.has(id));
    if (current < 0 || i > 0) return [{ ...block, wants }];
    const over = block.sets.findIndex(({ id }) => id === done.through);
    const sets = block.sets.slice(over + 1);
    if (sets.length === 0) return [];
    const marks = Array.from({ length: problem.cameras }, (_, camera) => done.marks[camera] ?? null);
    return [{ ...block, sets, wants, begun: { marks, restSeconds: block.sets[over]?.restSeconds ?? 0 } }];
  });
}

function changed(blocks: readonly CoverageBlock[], change: CoverageChange): CoverageBlock[] {
  const others = blocks.filter(({ id }) => id !== change.block);
  const block = blocks.find(({ id }) => id === change.block);
  if (!block) return others;
  if (change.type === "angle-lost") {
    const wants = block.wants.filter(({ mark }) => mark !== change.mark);
    const begun = block.begun && { ...block.begun, marks: block.begun.marks.map((mark) => (mark === change.mark ? null : mark)) };
    return blocks.map((each) => (each === block ? { ...block, wants, begun } : each));
  }
  // Whoever comes back to a station sets up anew, and the first set-up is free.
  return change.then === "later" ? [...others, { ...block, begun: undefined }] : others;
}

/**
 * Plans what is left of a session when something has come in between: an angle is lost, or a station is taken and its block waits
 * until the end or is dropped. The same engine as `planCoverage`; nothing that is done is changed, nothing given is written to.
 * @throws RangeError when `done` or `change` names something the problem does not have
 */
export function replan(problem: CoverageProblem, done: CoverageDone, change: CoverageChange): Replanned {
  if (!problem.blocks.some(({ id }) => id === change.block)) throw new RangeError(`replan: there is no block "${change.block}".`);
  const left: CoverageProblem = { ...problem, blocks: changed(remaining(problem, done), change) };
  const plan = planCoverage(left);
  const filmed = new Set([...done.filmed, ...plan.shots.map(({ want }) => want)]);
  const lost = problem.blocks.flatMap(({ wants }) => wants.filter(({ id }) => !filmed.has(id)).map(({ id }) => id));
  return { problem: left, plan: { ...plan, lost } };
}
