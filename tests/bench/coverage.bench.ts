import { bench, describe } from "vitest";
import { planCoverage, type CoverageProblem, type CoverageSet, type SetKind, type Want } from "../../shared/filming";
import { bestByOptimiser, optimiser } from "../unit/filming/coverage-optimiser";
import { filmedScore } from "../unit/filming/coverage-problems";

/** A small generator of numbers that look random and are always the same. */
function numbers(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const RESTS = [20, 40, 45, 60, 75, 90, 120];
const KINDS: readonly Want["kind"][] = ["any", "working", "working", "ramp", "demo"];

/** So many sets, wants and cameras, in so many blocks: ramp-up sets first, the demonstration last. */
function problem(sets: number, wants: number, marks: number, cameras: 1 | 2, blocks = 1, seed = 7, named = 0): CoverageProblem {
  const random = numbers(seed);
  const kindAt = (index: number, of: number): SetKind => (index < of / 4 ? "ramp" : index === of - 1 ? "demo" : "working");
  return {
    cameras,
    moveSeconds: 45,
    blocks: Array.from({ length: blocks }, (_, b) => ({
      id: `block ${b}`,
      station: `station ${b}`,
      changeSeconds: 90,
      sets: Array.from({ length: sets / blocks }, (_, s): CoverageSet => ({ id: `set ${b}.${s}`, kind: kindAt(s, sets / blocks), seconds: 40, restSeconds: RESTS[random(RESTS.length)] ?? 60 })),
      wants: Array.from({ length: wants }, (_, w): Want => ({
        id: `want ${b}.${w}`, mark: `mark ${w < marks ? w : random(marks)}`, need: random(2) === 0 ? "must" : "nice", weight: 1 + random(3) / 2, kind: KINDS[random(KINDS.length)] ?? "any",
        ...(w < named ? { sets: [`set ${b}.${random(sets / blocks)}`], kind: "any" } : {}),
      })),
    })),
  };
}

/** Read the ratio in the printed lines: both find the same optimum of the same problem, one after the other, in one run. */
const { solve } = await optimiser();
const cases: readonly (readonly [string, CoverageProblem])[] = [
  ["40 sets x 12 wants from 12 marks x 2 cameras, one block", problem(40, 12, 12, 2)],
  ["40 sets x 12 wants from 6 marks x 2 cameras, one block", problem(40, 12, 6, 2)],
  ["40 sets x 12 wants from 12 marks x 1 camera, one block", problem(40, 12, 12, 1)],
  ["40 sets in 8 blocks, 12 wants from 12 marks each, 2 cameras", problem(40, 12, 12, 2, 8)],
  ["40 sets in 8 blocks, 12 wants from 12 marks each, 4 of them for a named set, 2 cameras", problem(40, 12, 12, 2, 8, 7, 4)],
  ["40 sets x 12 wants from 12 marks, 4 for a named set, 2 cameras, one block", problem(40, 12, 12, 2, 1, 7, 4)],
];

/** Seconds the optimiser may take to prove one of its four aims; without a proof its time is only a lower limit. */
const STAGE_SECONDS = 40;

for (const [name, each] of cases) {
  const started = performance.now();
  const plan = planCoverage(each);
  const taken = performance.now() - started;
  const ours = [...filmedScore(each.blocks.flatMap(({ wants }) => wants), plan.lost), plan.extraSeconds, plan.moves];
  const start = performance.now();
  const theirs = bestByOptimiser(solve, each, STAGE_SECONDS);
  const time = performance.now() - start;
  console.log(`${name}: the plan [${ours.join(", ")}] in ${taken.toFixed(1)} ms; the optimiser ${theirs ? `[${theirs.join(", ")}]` : "without a proof"} in ${Math.round(time)} ms: ${Math.round(time / taken)} times`);
  if (theirs && ours.some((value, i) => Math.abs(value - (theirs[i] ?? NaN)) > 0.01)) throw new Error(`The plans differ: ${name}.`);

  describe(name, () => {
    bench("the coverage plan", () => void planCoverage(each), { iterations: 5, time: 200, warmupIterations: 1 });
  });
}
