import { allowsSet } from "./allows";
import { fromMicros, toMicros } from "./exact";
import type { CoverageBlock, CoveragePlan, CoverageProblem, CoverageShot, CoverageStand } from "./types";

/** Moves and extra time of some stands, counted rest by rest from the stands alone. */
export function coverageCost(problem: CoverageProblem, stands: readonly CoverageStand[]): { readonly moves: number; readonly extraSeconds: number } {
  const at = new Map(stands.map(({ set, camera, mark }) => [`${camera} ${set}`, mark]));
  let moves = 0;
  let extra = 0;
  for (const block of problem.blocks) {
    block.sets.forEach((set, i) => {
      const before = block.sets[i - 1];
      if (!before && !block.begun) return;
      const rest = before ? before.restSeconds : (block.begun?.restSeconds ?? 0);
      let moved = 0;
      for (let camera = 1; camera <= problem.cameras; camera++) {
        const now = at.get(`${camera} ${set.id}`);
        const then = before ? at.get(`${camera} ${before.id}`) : block.begun?.marks[camera - 1];
        if (now !== undefined && now !== then) moved++;
      }
      moves += moved;
      extra += Math.max(0, moved * toMicros(problem.moveSeconds) - toMicros(rest));
    });
  }
  return { moves, extraSeconds: fromMicros(extra) };
}

/** What is filmed from some stands: each want once, at the first set that films it. */
export function shotsFrom(block: CoverageBlock, stands: readonly CoverageStand[]): CoverageShot[] {
  const open = new Set(block.wants);
  const shots: CoverageShot[] = [];
  for (const set of block.sets) {
    for (const stand of stands.filter((each) => each.set === set.id)) {
      for (const want of open) {
        if (want.mark !== stand.mark || !allowsSet(want, set)) continue;
        shots.push({ want: want.id, set: set.id, camera: stand.camera });
        open.delete(want);
      }
    }
  }
  return shots;
}

/** What is wrong with a plan, in sentences; empty when it is a plan for this problem. Says nothing about it being the best. */
export function coverageViolations(problem: CoverageProblem, plan: CoveragePlan): string[] {
  const wrong: string[] = [];
  const sets = new Map(problem.blocks.flatMap((block) => block.sets.map((set) => [set.id, { set, block }] as const)));
  const wants = new Map(problem.blocks.flatMap((block) => block.wants.map((want) => [want.id, { want, block }] as const)));
  const places = new Map<string, string>();
  for (const { set, camera, mark } of plan.stands) {
    const at = sets.get(set);
    if (!at) wrong.push(`There is no set "${set}".`);
    else if (!at.block.wants.some((want) => want.mark === mark) && !at.block.begun?.marks.includes(mark)) wrong.push(`Nothing is wanted from "${mark}" in block "${at.block.id}".`);
    if (!Number.isInteger(camera) || camera < 1 || camera > problem.cameras) wrong.push(`There is no camera ${camera}.`);
    if (places.has(`${camera} ${set}`)) wrong.push(`Camera ${camera} stands at two marks in set "${set}".`);
    places.set(`${camera} ${set}`, mark);
  }
  for (const block of problem.blocks.filter((each) => each.wants.length > 0)) {
    for (const { id } of block.sets) for (let camera = 1; camera <= problem.cameras; camera++) if (!places.has(`${camera} ${id}`)) wrong.push(`Camera ${camera} stands nowhere in set "${id}".`);
  }
  for (const shot of plan.shots) {
    const [want, set] = [wants.get(shot.want), sets.get(shot.set)];
    if (!want || !set || want.block !== set.block) wrong.push(`"${shot.want}" is not wanted in set "${shot.set}".`);
    else if (places.get(`${shot.camera} ${shot.set}`) !== want.want.mark) wrong.push(`"${shot.want}" is filmed from another mark than its own.`);
    else if (!allowsSet(want.want, set.set)) wrong.push(`"${shot.want}" is filmed on a set it is not for.`);
  }
  const told = [...plan.shots.map((shot) => shot.want), ...plan.lost].sort();
  if (told.join("\n") !== [...wants.keys()].sort().join("\n")) wrong.push("Not every want is either filmed or lost, once.");
  const cost = coverageCost(problem, plan.stands);
  if (cost.moves !== plan.moves) wrong.push(`The plan counts ${plan.moves} moves, its stands make ${cost.moves}.`);
  if (cost.extraSeconds !== plan.extraSeconds) wrong.push(`The plan counts ${plan.extraSeconds} extra seconds, its stands make ${cost.extraSeconds}.`);
  return wrong;
}
