import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverageCost, coverageViolations, planCoverage, type CoverageBlock, type CoverageProblem } from "../../../shared/filming";
import { filmedScore, isBetter, problems, type Score } from "./coverage-problems";

/** Tries every stand of every camera in every set of one block. */
function bestByTrying({ cameras, moveSeconds }: CoverageProblem, block: CoverageBlock): Score {
  const marks = [...new Set(block.wants.map(({ mark }) => mark))];
  const pairs = cameras === 1 ? marks.map((mark) => [mark]) : marks.flatMap((one) => marks.map((two) => [one, two]));
  let best: Score = [0, 0, Infinity, Infinity];
  const go = (set: number, at: readonly string[], filmed: ReadonlySet<string>, extra: number, moves: number): void => {
    const now = block.sets[set];
    if (!now) {
      const lost = block.wants.filter(({ id }) => !filmed.has(id)).map(({ id }) => id);
      const score: Score = [...filmedScore(block.wants, lost), extra, moves];
      if (isBetter(score, best)) best = score;
      return;
    }
    const rest = set > 0 ? block.sets[set - 1]?.restSeconds : block.begun?.restSeconds;
    for (const pair of pairs) {
      const moved = rest === undefined ? 0 : pair.filter((mark, i) => mark !== at[i]).length;
      const more = block.wants.filter((want) => pair.includes(want.mark) && (want.kind === "any" || want.kind === now.kind) && (want.sets?.includes(now.id) ?? true)).map(({ id }) => id);
      go(set + 1, pair, new Set([...filmed, ...more]), extra + Math.max(0, moved * moveSeconds - (rest ?? 0)), moves + moved);
    }
  };
  if (marks.length === 0) return [0, 0, 0, 0];
  go(0, (block.begun?.marks ?? []).map((mark) => mark ?? "nowhere"), new Set(), 0, 0);
  return best;
}

const sum = (scores: readonly Score[]): Score => scores.reduce<Score>((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]], [0, 0, 0, 0]);

function scoreOf(problem: CoverageProblem): Score {
  const plan = planCoverage(problem);
  return [...filmedScore(problem.blocks.flatMap(({ wants }) => wants), plan.lost), plan.extraSeconds, plan.moves];
}

function expectSame(problem: CoverageProblem): void {
  const [ours, tried] = [scoreOf(problem), sum(problem.blocks.map((block) => bestByTrying(problem, block)))];
  ours.forEach((value, i) => expect(value).toBeCloseTo(tried[i] ?? NaN, 6));
}

describe("planCoverage is as good as trying everything", () => {
  it("with one camera", () => {
    fc.assert(fc.property(problems({ blocks: 2, sets: 6, wants: 6, marks: 4 }, [1]), expectSame), { numRuns: 300, seed: 11 });
  });

  it("with two cameras", () => {
    fc.assert(fc.property(problems({ blocks: 1, sets: 4, wants: 6, marks: 4 }, [2]), expectSame), { numRuns: 200, seed: 12 });
  });

  it("with wants that name their sets", () => {
    fc.assert(fc.property(problems({ blocks: 2, sets: 6, wants: 6, marks: 4, named: true }, [1]), expectSame), { numRuns: 300, seed: 15 });
    fc.assert(fc.property(problems({ blocks: 1, sets: 4, wants: 6, marks: 4, named: true }, [2]), expectSame), { numRuns: 200, seed: 16 });
  });

  it("in a block that has begun, even when a camera must leave its mark", () => {
    const begun = fc.tuple(fc.boolean().chain((named) => problems({ blocks: 1, sets: 4, wants: 5, marks: 3, named })), fc.array(fc.constantFrom("mark 1", "mark 2", null), { minLength: 2, maxLength: 2 }), fc.constantFrom(0, 30, 45, 100));
    fc.assert(fc.property(begun, ([problem, marks, restSeconds]) => {
      expectSame({ ...problem, blocks: problem.blocks.map((block) => {
        const known = marks.map((mark) => (block.wants.some((want) => want.mark === mark) ? mark : null));
        return { ...block, begun: { marks: known.slice(0, problem.cameras), restSeconds } };
      }) });
    }), { numRuns: 300, seed: 13 });
  });
});

describe("a plan", () => {
  it("keeps its rules and counts its cost as its stands do", () => {
    fc.assert(fc.property(problems({ blocks: 3, sets: 12, wants: 12, marks: 8 }), (problem) => {
      const plan = planCoverage(problem);
      expect(coverageViolations(problem, plan)).toEqual([]);
      expect(coverageCost(problem, plan.stands)).toEqual({ moves: plan.moves, extraSeconds: plan.extraSeconds });
    }), { numRuns: 200, seed: 14 });
    fc.assert(fc.property(problems({ blocks: 3, sets: 9, wants: 9, marks: 6, named: true }), (problem) => {
      expect(coverageViolations(problem, planCoverage(problem))).toEqual([]);
    }), { numRuns: 200, seed: 17 });
  });

  it("leaves the camera standing between blocks at one station where that costs nothing", () => {
    const set = (id: string): CoverageBlock["sets"][number] => ({ id, kind: "working", seconds: 40, restSeconds: 90 });
    const block = (id: string, station: string, marks: readonly string[], sets?: readonly string[]): CoverageBlock => ({
      id, station, changeSeconds: 0, sets: [set(`${id} 1`), set(`${id} 2`)],
      wants: marks.map((mark) => ({ id: `${id} ${mark}`, mark, need: "must", weight: 1, kind: "any", ...(sets ? { sets } : {}) })),
    });
    const marksOf = (second: CoverageBlock): string[] => planCoverage({ cameras: 1, moveSeconds: 45, blocks: [block("a", "bench", ["front", "side"]), second] }).stands.map(({ mark }) => mark);
    expect(marksOf(block("b", "Bench", ["rear", "side"]))).toEqual(["front", "side", "side", "rear"]);
    expect(marksOf(block("b", "Bench", ["rear", "side"], ["b 1", "b 2"]))).toEqual(["front", "side", "side", "rear"]);
    expect(marksOf(block("b", "rack", ["rear", "side"]))).toEqual(["front", "side", "rear", "side"]);
  });
});
