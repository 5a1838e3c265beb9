import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { planCoverage, type CoverageProblem } from "../../shared/filming";
import { bestByOptimiser, optimiser } from "../unit/filming/coverage-optimiser";
import { filmedScore, problems, type Score } from "../unit/filming/coverage-problems";

/** Source of the check: HiGHS, a general-purpose optimiser (https://highs.dev), solving the same task as a mixed-integer programme. */
describe("the coverage plan against a general-purpose optimiser", () => {
  let solve: Awaited<ReturnType<typeof optimiser>>["solve"];
  beforeAll(async () => {
    const solver = await optimiser();
    solve = (model, options) => solver.solve(model, options);
  });

  const same = (problem: CoverageProblem): void => {
    const plan = planCoverage(problem);
    const ours: Score = [...filmedScore(problem.blocks.flatMap(({ wants }) => wants), plan.lost), plan.extraSeconds, plan.moves];
    const theirs = bestByOptimiser(solve, problem);
    ours.forEach((value, i) => expect(value, `score ${i}`).toBeCloseTo(theirs?.[i] ?? NaN, 2));
  };

  it("films as much, loses as little time and moves as little on 200 small problems", () => {
    fc.assert(fc.property(problems({ blocks: 2, sets: 6, wants: 6, marks: 4 }), same), { numRuns: 200, seed: 21 });
  }, 240_000);

  it("and on 60 in which wants name their sets", () => {
    fc.assert(fc.property(problems({ blocks: 2, sets: 7, wants: 8, marks: 5, named: true }), same), { numRuns: 60, seed: 23 });
  }, 240_000);

  it("and on 25 of the size of a session's block", () => {
    fc.assert(fc.property(problems({ blocks: 1, sets: 12, wants: 9, marks: 6 }), same), { numRuns: 25, seed: 22, endOnFailure: true });
  }, 240_000);
});
