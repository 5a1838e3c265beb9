import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverageViolations, coverageWarnings, doneThrough, planCoverage, readCoverageProblem, remedyFor, replan, type CoverageBlock, type CoverageProblem, type Want } from "../../../shared/filming";
import { filmedScore, problems } from "./coverage-problems";

const want = (id: string, mark: string, rest: Partial<Want> = {}): Want => ({ id, mark, need: "must", weight: 1, kind: "any", ...rest });
const row = (wants: readonly Want[], rests: readonly number[] = [90, 90, 90]): CoverageBlock => ({
  id: "row", station: "bench", changeSeconds: 90, wants,
  sets: rests.map((restSeconds, i) => ({ id: `row ${i + 1}`, kind: i === 0 ? "ramp" as const : "working" as const, seconds: 40, restSeconds })),
});
const one = (...blocks: CoverageBlock[]): CoverageProblem => ({ cameras: 1, moveSeconds: 45, blocks });

describe("planCoverage", () => {
  it("moves in the longer rest, and pays only for what does not fit", () => {
    const plan = planCoverage(one(row([want("arms", "side"), want("back", "rear")], [20, 30, 90])));
    expect(plan).toEqual({
      stands: [{ set: "row 1", camera: 1, mark: "side" }, { set: "row 2", camera: 1, mark: "side" }, { set: "row 3", camera: 1, mark: "rear" }],
      shots: [{ want: "arms", set: "row 1", camera: 1 }, { want: "back", set: "row 3", camera: 1 }],
      lost: [], moves: 1, extraSeconds: 15,
    });
  });

  it("compares weights as they are written: 0.1 and 0.2 tie with 0.3, and the first in the list wins", () => {
    const wants = [want("a", "side", { need: "nice", weight: 0.3 }), want("b", "rear", { need: "nice", weight: 0.1 }), want("c", "rear", { need: "nice", weight: 0.2 })];
    expect(planCoverage(one(row(wants, [0]))).lost).toEqual(["b", "c"]);
    expect(planCoverage(one(row([...wants.slice(1), ...wants.slice(0, 1)], [0]))).lost).toEqual(["a"]);
  });

  it("gives no stands where nothing is wanted", () => {
    expect(planCoverage(one(row([])))).toEqual({ stands: [], shots: [], lost: [], moves: 0, extraSeconds: 0 });
  });

  it("lets a second camera stand at the only mark", () => {
    const plan = planCoverage({ ...one(row([want("arms", "side")])), cameras: 2 });
    expect(plan.stands.map(({ camera, mark }) => [camera, mark])).toEqual([[1, "side"], [2, "side"], [1, "side"], [2, "side"], [1, "side"], [2, "side"]]);
    expect(plan.moves).toBe(0);
  });

  it("gives the same plan for the same problem, and new names change nothing but the names", () => {
    const renamed = (problem: CoverageProblem, to: (name: string) => string): CoverageProblem => ({
      ...problem,
      blocks: problem.blocks.map((block) => ({ ...block, id: to(block.id), sets: block.sets.map((set) => ({ ...set, id: to(set.id) })), wants: block.wants.map((each) => ({ ...each, id: to(each.id), mark: to(each.mark), ...(each.sets ? { sets: each.sets.map(to) } : {}) })) })),
    });
    const mirror = (name: string): string => [...name].reverse().join("");
    fc.assert(fc.property(fc.boolean().chain((named) => problems({ blocks: 2, sets: 10, wants: 10, marks: 7, named })), (problem) => {
      const plan = planCoverage(problem);
      expect(planCoverage(structuredClone(problem))).toEqual(plan);
      const other = planCoverage(renamed(problem, mirror));
      expect({
        ...other,
        stands: other.stands.map((stand) => ({ ...stand, set: mirror(stand.set), mark: mirror(stand.mark) })),
        shots: other.shots.map((shot) => ({ ...shot, set: mirror(shot.set), want: mirror(shot.want) })),
        lost: other.lost.map(mirror),
      }).toEqual(plan);
    }), { numRuns: 100, seed: 31 });
  });
});

describe("coverageViolations", () => {
  it("names what is wrong with a plan", () => {
    const problem = one(row([want("arms", "side"), want("back", "rear", { kind: "working" })]));
    const plan = planCoverage(problem);
    expect(coverageViolations(problem, { ...plan, moves: 5 })).toEqual(["The plan counts 5 moves, its stands make 1."]);
    expect(coverageViolations(problem, { ...plan, lost: ["arms"] })).toEqual(["Not every want is either filmed or lost, once."]);
    expect(coverageViolations(problem, { ...plan, stands: [...plan.stands, { set: "row 1", camera: 1, mark: "rear" }] })).toContain('Camera 1 stands at two marks in set "row 1".');
    expect(coverageViolations(problem, { ...plan, shots: plan.shots.map((shot) => ({ ...shot, set: "row 1" })) })).toContain('"back" is filmed from another mark than its own.');
  });
});

describe("remedyFor", () => {
  const remedy = (problem: CoverageProblem): string | undefined => remedyFor(problem, planCoverage(problem))?.sentence;

  it("is silent when nothing is lost", () => expect(remedyFor(one(row([want("arms", "side")])), planCoverage(one(row([want("arms", "side")]))))).toBeNull());
  it("proposes a demonstration where only that is missing", () => {
    expect(remedy(one(row([want("arms", "side"), want("grip", "front", { kind: "demo" })])))).toBe('A demonstration in "row" films "grip" and takes 0:20 longer.');
  });
  it("proposes one more light set, priced with its rest", () => {
    expect(remedy(one(row([want("arms", "side", { kind: "ramp" }), want("back", "rear", { kind: "ramp" })])))).toBe('One more light set in "row" films "back" and takes 2:10 longer.');
  });
  it("proposes a second camera when one set does not do as well", () => {
    const wants = ["a", "b", "c"].flatMap((mark) => [want(`${mark}1`, mark, { kind: "working" }), want(`${mark}2`, mark, { kind: "ramp" })]);
    expect(remedy(one(row([...wants, want("d1", "d", { kind: "working" })])))).toMatch(/^A second camera films "[abcd]/);
  });
  it("regains what it says, on any problem", () => {
    fc.assert(fc.property(problems({ blocks: 2, sets: 4, wants: 7, marks: 5 }), (problem) => {
      const plan = planCoverage(problem);
      const found = remedyFor(problem, plan);
      expect(found === null).toBe(plan.lost.length === 0);
      if (found?.remedy) for (const id of found.remedy.regains) expect(plan.lost).toContain(id);
      if (found?.remedy?.type === "second-camera") expect(planCoverage({ ...problem, cameras: 2 }).lost).not.toContain(found.remedy.regains[0]);
    }), { numRuns: 100, seed: 32 });
  });
});

describe("replan", () => {
  const problem = one(row([want("arms", "side"), want("back", "rear"), want("grip", "front")]), { ...row([want("hips", "side 2")]), id: "squat", sets: [{ id: "squat 1", kind: "working", seconds: 40, restSeconds: 90 }] });
  const plan = planCoverage(problem);

  it("loses the wants of a lost angle and goes on without it", () => {
    const next = replan(problem, doneThrough(problem, plan, "row 1"), { type: "angle-lost", block: "row", mark: "rear" });
    expect(next.plan.lost).toEqual(["back"]);
    expect(next.plan.shots.map((shot) => shot.want)).toEqual(["grip", "hips"]);
    expect(next.plan.moves).toBe(1);
  });
  it("moves a block whose station is taken to the end, with a free set-up", () => {
    const next = replan(problem, doneThrough(problem, plan, "row 1"), { type: "station-taken", block: "row", then: "later" });
    expect(next.problem.blocks.map(({ id }) => id)).toEqual(["squat", "row"]);
    expect([next.plan.lost, next.plan.moves]).toEqual([[], 1]);
  });
  it("drops a block and says what is lost with it", () => {
    const next = replan(problem, { through: null, filmed: [], marks: [] }, { type: "station-taken", block: "row", then: "dropped" });
    expect(next.plan.lost).toEqual(["arms", "back", "grip"]);
  });
  it("refuses names that do not exist", () => {
    expect(() => replan(problem, { through: "none", filmed: [], marks: [] }, { type: "station-taken", block: "row", then: "later" })).toThrow('replan: there is no set "none".');
    expect(() => replan(problem, { through: null, filmed: [], marks: [] }, { type: "station-taken", block: "none", then: "later" })).toThrow('replan: there is no block "none".');
  });
  it("costs no more than the plan it replaces when nothing that matters has changed", () => {
    fc.assert(fc.property(problems({ blocks: 2, sets: 6, wants: 6, marks: 4 }), fc.nat(11), (each, at) => {
      const before = JSON.stringify(each);
      const planned = planCoverage(each);
      const sets = each.blocks.flatMap((block) => block.sets);
      const done = doneThrough(each, planned, sets[at % sets.length]?.id ?? "");
      const next = replan(each, done, { type: "angle-lost", block: each.blocks[0]?.id ?? "", mark: "a mark nobody uses" });
      expect(coverageViolations(next.problem, { ...next.plan, lost: planCoverage(next.problem).lost })).toEqual([]);
      // Which of two equal wants is lost may change with where the camera stands; what is filmed is worth the same.
      const wants = each.blocks.flatMap((block) => block.wants);
      expect(filmedScore(wants, next.plan.lost)).toEqual(filmedScore(wants, planned.lost));
      expect(next.plan.extraSeconds).toBeLessThanOrEqual(planned.extraSeconds + 1e-9);
      expect(JSON.stringify(each)).toBe(before);
    }), { numRuns: 200, seed: 33 });
  });
});

describe("readCoverageProblem", () => {
  const good = JSON.parse(JSON.stringify(one(row([want("arms", "side")])))) as Record<string, unknown>;
  const withBlock = (change: Record<string, unknown>): unknown => ({ ...good, blocks: [{ ...row([want("arms", "side")]), ...change }] });
  const set = { id: "s", kind: "working", seconds: 40, restSeconds: 90 };

  it("takes a good problem as it is", () => expect(readCoverageProblem(good)).toEqual({ ok: true, problem: good }));
  it.each([
    ["no block", { ...good, blocks: [] }, "At blocks: there is no block."],
    ["no sets", withBlock({ sets: [] }), "At blocks[0].sets: a block needs at least one set."],
    ["no rest", withBlock({ sets: [{ id: "s", kind: "working", seconds: 40 }] }), "At blocks[0].sets[0].restSeconds: expected seconds as a number."],
    ["no camera", { ...good, cameras: 0 }, "At cameras: expected one camera or two."],
    ["three cameras", { ...good, cameras: 3 }, "At cameras: expected one camera or two."],
    ["an unknown kind", withBlock({ sets: [{ ...set, kind: "heavy" }] }), 'At blocks[0].sets[0].kind: expected the kind "ramp", "working" or "demo".'],
    ["a negative rest", withBlock({ sets: [{ ...set, restSeconds: -1 }] }), "At blocks[0].sets[0].restSeconds: expected 0 seconds or more."],
    ["an absurd rest", withBlock({ sets: [{ ...set, restSeconds: 1e9 }] }), "At blocks[0].sets[0].restSeconds: expected less than a day of seconds."],
    ["a negative weight", withBlock({ wants: [want("w", "m", { weight: -1 })] }), "At blocks[0].wants[0].weight: expected a weight of 0 or more."],
    ["a set named twice", withBlock({ sets: [set, set] }), 'At blocks[0].sets[1].id: the set "s" already stands at blocks[0].sets[0].'],
    ["a want named twice", withBlock({ wants: [want("w", "m"), want("w", "n")] }), 'At blocks[0].wants[1].id: the want "w" already stands at blocks[0].wants[0].'],
  ])("refuses %s", (_name, json, error) => expect(readCoverageProblem(json)).toEqual({ ok: false, error }));
  it("survives anything", () => {
    fc.assert(fc.property(fc.jsonValue(), (json) => {
      expect(readCoverageProblem(json).ok).toBe(false);
    }), { seed: 34 });
  });
  it("warns of what no plan can film", () => {
    expect(coverageWarnings(one(row([want("a", "1", { kind: "demo" }), want("b", "2"), want("c", "3"), want("d", "4")])))).toEqual([
      'At blocks[0].wants[0].kind: "a" asks for a set of the kind "demo", and block "row" has none.',
      "At blocks[0].wants: musts from 4 marks, but 3 sets and one camera, so at most 3 of the marks can be filmed.",
    ]);
  });
});
