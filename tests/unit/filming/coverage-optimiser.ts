import highsLoader from "highs";
import type { CoverageProblem } from "../../../shared/filming";
import type { Score } from "./coverage-problems";

type Solver = Awaited<ReturnType<typeof highsLoader>>;
let solver: Promise<Solver> | null = null;
/** The general-purpose optimiser HiGHS (mixed-integer branch and cut, MIT licence), loaded once. */
export const optimiser = (): Promise<Solver> => (solver ??= highsLoader());

interface Term {
  readonly factor: number;
  readonly name: string;
}

const sumOf = (terms: readonly Term[]): string => terms.map(({ factor, name }) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`).join("\n ") || "0 none";

/**
 * The plan as a mixed-integer programme, stated from the task and not from our algorithm: a binary for each camera, set and mark;
 * one for each want; one for each camera and rest (does it move?); the extra seconds of each rest.
 */
export function modelOf(problem: CoverageProblem): { readonly stages: readonly (readonly Term[])[]; readonly senses: readonly string[]; readonly rows: string[]; readonly bounds: string[]; readonly binaries: string[] } {
  const rows: string[] = [];
  const binaries: string[] = [];
  const stages: [Term[], Term[], Term[], Term[]] = [[], [], [], []];
  const row = (terms: readonly Term[], sense: string): void => void rows.push(` r${rows.length}: ${sumOf(terms)} ${sense}`);
  const cameras = Array.from({ length: problem.cameras }, (_, camera) => camera);
  problem.blocks.forEach((block, b) => {
    const marks = [...new Set(block.wants.map(({ mark }) => mark))];
    if (marks.length === 0) return;
    const at = (camera: number, set: number, mark: number): string => `y${b}_${camera}_${set}_${mark}`;
    block.sets.forEach((_, s) => {
      for (const camera of cameras) {
        row(marks.map((_, m) => ({ factor: 1, name: at(camera, s, m) })), "= 1");
        binaries.push(...marks.map((_, m) => at(camera, s, m)));
        if (s === 0) continue;
        const moved = `v${b}_${camera}_${s}`;
        binaries.push(moved);
        marks.forEach((_, m) => row([{ factor: 1, name: moved }, { factor: -1, name: at(camera, s, m) }, { factor: 1, name: at(camera, s - 1, m) }], ">= 0"));
        stages[3].push({ factor: 1, name: moved });
      }
      if (s === 0) return;
      const extra = `e${b}_${s}`;
      row([{ factor: 1, name: extra }, ...cameras.map((camera) => ({ factor: -problem.moveSeconds, name: `v${b}_${camera}_${s}` }))], `>= ${-(block.sets[s - 1]?.restSeconds ?? 0)}`);
      stages[2].push({ factor: 1, name: extra });
    });
    block.wants.forEach((want, w) => {
      const filmed = `z${b}_${w}`;
      binaries.push(filmed);
      const stands = block.sets.flatMap((set, s) => ((want.kind === "any" || want.kind === set.kind) && (want.sets?.includes(set.id) ?? true) ? cameras.map((camera) => ({ factor: -1, name: at(camera, s, marks.indexOf(want.mark)) })) : []));
      row([{ factor: 1, name: filmed }, ...stands], "<= 0");
      if (want.need === "must") stages[0].push({ factor: 1, name: filmed });
      else stages[1].push({ factor: Math.round(want.weight * 100), name: filmed });
    });
  });
  return { stages, senses: ["Maximize", "Maximize", "Minimize", "Minimize"], rows, bounds: [" 0 <= none <= 0"], binaries };
}

/**
 * The best score by the optimiser: each aim in turn, with what is reached so far kept as a constraint.
 * @returns null when an aim is not proven best within `stageSeconds`
 */
export function bestByOptimiser(solve: Solver["solve"], problem: CoverageProblem, stageSeconds = 600): Score | null {
  const { stages, senses, rows, bounds, binaries } = modelOf(problem);
  const reached: number[] = [];
  const kept: string[] = [];
  for (const [stage, terms] of stages.entries()) {
    const model = `${senses[stage]}\n obj: ${sumOf(terms)}\nSubject To\n${[...rows, ...kept].join("\n") || " none = 0"}\nBounds\n${bounds.join("\n")}\nBinary\n ${binaries.join("\n ")}\nEnd\n`;
    const used = terms.filter(({ factor }) => factor !== 0);
    if (used.length === 0) {
      reached.push(0);
      continue;
    }
    const solution = solve(model, { mip_rel_gap: 0, mip_abs_gap: 1e-6, time_limit: stageSeconds });
    if (solution.Status === "Time limit reached") return null;
    if (solution.Status !== "Optimal") throw new Error(`The optimiser says ${solution.Status}.`);
    const value = stage === 2 ? Math.round(solution.ObjectiveValue * 1e4) / 1e4 : Math.round(solution.ObjectiveValue);
    reached.push(value);
    kept.push(` k${stage}: ${sumOf(terms)} ${stage < 2 ? `>= ${value - 1e-3}` : `<= ${value + 1e-3}`}`);
  }
  const [musts = 0, weight = 0, extra = 0, moves = 0] = reached;
  return [musts, weight, extra, moves];
}
