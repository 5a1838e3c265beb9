import type { Block, Episode } from "../../episode";
import { marksOf, planCoverage, secondsOf, setupOf, shotsOf, type CoveragePlan, type CoverageProblem, type Mark, type SetKind, type Shot } from "../../filming";
import { plannedSets, stationOf } from "../../training";

export interface ShootSet { readonly id: string; readonly role: "ramp-up" | "working" | "demonstration" | "run"; readonly number: number; readonly name: string; readonly work: string; readonly load: string; readonly workSeconds: number; readonly restSeconds: number }
export interface ShootWant { readonly id: string; readonly line: string; readonly mark: string; readonly need: "must" | "nice"; readonly seconds: number; readonly shot: Shot }
export interface ShootBlock { readonly block: Block; readonly station: string; readonly sets: readonly ShootSet[]; readonly wants: readonly ShootWant[]; readonly marks: readonly Mark[] }
export interface ShootPlan { readonly problem: CoverageProblem; readonly plan: CoveragePlan; readonly blocks: readonly ShootBlock[] }

const keyOf = (shot: Pick<Shot, "angle" | "size">): string => `${shot.angle ?? "any"} ${shot.size ?? "any"}`;
const KINDS: Readonly<Record<ShootSet["role"], SetKind>> = { "ramp-up": "ramp", working: "working", demonstration: "demo", run: "working" };

function blockOf(episode: Episode, block: Block): ShootBlock {
  const sets = plannedSets(block).map((set, i): ShootSet => ({ id: `${block.id}:${i + 1}`, role: set.role, number: set.number, name: `${set.role === "working" ? "Set" : "Ramp-up"} ${set.number}`, work: set.work, load: set.load, workSeconds: set.workSeconds, restSeconds: set.restSeconds }));
  const marks = marksOf(block, setupOf(episode, block));
  const wants = shotsOf(block).map(({ line, shot }): ShootWant => ({ id: line.id, line: line.id, mark: keyOf(shot), need: shot.need, seconds: secondsOf(shot), shot }));
  const runs = sets.length > 0 ? [] : marks.map((_, i): ShootSet => ({ id: `${block.id}:${i + 1}`, role: "run", number: i + 1, name: `Run ${i + 1}`, work: "", load: "", workSeconds: 60, restSeconds: 0 }));
  return { block, station: stationOf(block), sets: [...sets, ...runs], wants, marks };
}

/** The session's sets and shots as one coverage problem, and its plan. */
export function shootPlan(episode: Episode): ShootPlan {
  const blocks = episode.blocks.map((block) => blockOf(episode, block));
  const problem: CoverageProblem = {
    cameras: episode.session.cameras === 2 ? 2 : 1, moveSeconds: 45,
    blocks: blocks.filter(({ sets }) => sets.length > 0).map(({ block, station, sets, wants }) => ({
      id: block.id, station, changeSeconds: 0,
      sets: sets.map(({ id, role, workSeconds, restSeconds }) => ({ id, kind: KINDS[role], seconds: workSeconds, restSeconds })),
      wants: wants.map(({ id, mark, need, shot }) => {
        const named = shot.sets === null ? [] : sets.filter((set) => set.role === "working" && shot.sets?.includes(set.number)).map(({ id: set }) => set);
        return { id, mark, need, weight: 1, kind: "any" as const, ...(named.length > 0 ? { sets: named } : {}) };
      }),
    })),
  };
  return { problem, plan: planCoverage(problem), blocks };
}
