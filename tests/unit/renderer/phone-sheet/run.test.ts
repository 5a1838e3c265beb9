import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverageViolations, doneThrough, replan } from "../../../../shared/filming";
import { applyEdits, demoEpisode } from "../../../../shared/episode";
import { phoneSession, type PhoneSession } from "../../../../shared/exports";
import { readReport, takeOver, writeReportCode } from "../../../../shared/session-report";
import { afterPress, runOf } from "../../../../renderer/phone-sheet/run/after-press";
import type { Press } from "../../../../renderer/phone-sheet/run/presses";
import { reportOf } from "../../../../renderer/phone-sheet/run/report";
import { openClosing } from "../../../../renderer/phone-sheet/view/parts";
import { filmingOf, finderOf, firstRun, leftSets, nextSet, openShots, type Finder, type Run } from "../../../../renderer/phone-sheet/run/state";

const demo = phoneSession(demoEpisode);
const row = demo.blocks.find(({ name }) => name === "Chest-supported row") ?? expect.fail("no row");
const shotNamed = (words: string): string => row.shots.find(({ subject }) => subject.includes(words))?.id ?? expect.fail(words);
const [armPath, blades] = [shotNamed("arm path"), shotNamed("shoulder blades")];
const setNamed = (name: string): string => row.sets.find((set) => set.name === name)?.id ?? expect.fail(name);

/** A press without its moment. */
type Pressed = Press extends infer Each ? (Each extends Press ? Omit<Each, "at"> : never) : never;
const presses = (...list: Pressed[]): Press[] => list.map((press, i) => ({ ...press, at: 1000 * i }));
const done = (set: string): Pressed[] => [{ type: "begin", set }, { type: "end", set }];

/** Everything up to a set by the plan, each shot answered with yes. */
function through(find: Finder, last: string): Pressed[] {
  const list: Pressed[] = [{ type: "start" }];
  let run = firstRun(find);
  for (let i = 0; i < 200; i++) {
    const next = nextSet(find, run);
    if (!next) break;
    const shots = filmingOf(run, next.id).shots;
    const more: Pressed[] = [...done(next.id), ...shots.map((shot): Pressed => ({ type: "tick", shot, got: true }))];
    list.push(...more);
    run = presses(...more).reduce((so, press) => afterPress(find, so, press), run);
    if (next.id === last) break;
  }
  return list;
}

describe("a session on the phone", () => {
  const find = finderOf(demo);

  it("goes through every set in order and films what the plan says", () => {
    const run = runOf(find, presses(...through(find, "")));
    expect(nextSet(find, run)).toBeNull();
    expect(run.plan.lost).toEqual(demo.coverage.lost);
    expect([...run.answers.values()].every(({ got, set }) => got && set !== null)).toBe(true);
    expect(run.answers.size).toBe(demo.blocks.flatMap(({ shots }) => shots).length - demo.coverage.lost.length);
  });

  it("keeps to the plan on paper as long as no other is better", () => {
    const paper = demo.coverage.stands;
    let run = firstRun(find);
    for (const press of presses(...through(find, ""))) {
      run = afterPress(find, run, press);
      const left = new Set(leftSets(find, run).map(({ id }) => id));
      expect(run.plan.stands).toEqual(paper.filter(({ set }) => left.has(set)));
    }
  });

  it("plans a shot again that was not in the box, on another set of its kind", () => {
    const before = runOf(find, presses(...through(find, setNamed("Ramp-up 1")), ...done(setNamed("Set 1")), ...done(setNamed("Set 2"))));
    expect(before.films.get(setNamed("Set 2"))?.shots).toContain(armPath);
    const after = afterPress(find, before, { type: "tick", shot: armPath, got: false, at: 0 });
    expect(after.plan.shots.some(({ want }) => want === armPath || want === blades)).toBe(true);
    // One set is left for two shots from two marks: one of them is lost, and it is said which.
    expect(after.plan.lost.filter((id) => id === armPath || id === blades)).toHaveLength(1);
    expect(after.told?.words[0]).toMatch(/^Lost now: /);
  });

  it("counts a shot as filmed until somebody says no, so that the next mark stands at once", () => {
    const run = runOf(find, presses(...through(find, setNamed("Set 1")), ...done(setNamed("Set 2"))));
    expect(openShots(run)).toEqual([{ shot: armPath, set: setNamed("Set 2") }]);
    expect(run.plan.lost).not.toContain(armPath);
    expect(filmingOf(run, setNamed("Set 3")).shots).toEqual([blades]);
  });

  it("plans as well as the engine's own replanning, wherever the session stands and whichever angle is lost", () => {
    const order = demo.problem.blocks.flatMap((block) => block.sets.map(({ id }) => ({ block, id })));
    for (const { block, id } of order) {
      const before = runOf(find, presses(...through(find, id)));
      for (const mark of new Set(block.wants.map((want) => want.mark))) {
        const { plan } = replan(demo.problem, doneThrough(demo.problem, demo.coverage, id), { type: "angle-lost", block: block.id, mark });
        const mine = afterPress(find, before, { type: "angle-lost", block: block.id, mark, at: 0 }).plan;
        expect([mine.lost, mine.moves, mine.extraSeconds], `${id} ${mark}`).toEqual([plan.lost, plan.moves, plan.extraSeconds]);
      }
    }
  });

  it("films nothing more from an angle that is lost, and says what that costs", () => {
    const before = runOf(find, presses(...through(find, setNamed("Set 2"))));
    const after = afterPress(find, before, { type: "angle-lost", block: row.id, mark: "rear medium", at: 0 });
    expect(after.plan.lost).toContain(blades);
    expect(after.plan.stands.some(({ set, mark }) => set.startsWith(`${row.id}:`) && mark === "rear medium")).toBe(false);
    expect(after.told?.words).toEqual(["Mark B of Chest-supported row is lost: nothing more is filmed from there.", "Lost now: Rear, medium: shoulder blades together, then apart (Chest-supported row)."]);
  });

  it("puts a taken station behind the others, in front of the cool-down", () => {
    const run = runOf(find, presses(...through(find, setNamed("Set 1")), { type: "station-taken", block: row.id, then: "later" }));
    const names = run.order.map((id) => find.block(id).name);
    expect(names.slice(-3)).toEqual(["Chest-supported row", "Cool-down", "Closing"]);
    expect(nextSet(find, run)?.name).toBe("Ramp-up 1");
    expect(run.told?.words).toEqual(["Chest-supported row comes later, after Anti-rotation press.", "No shot is lost by it."]);
  });

  it("leaves a dropped block out, names what is lost by it, and takes it up again by a jump", () => {
    const dropped = runOf(find, presses({ type: "start" }, { type: "station-taken", block: row.id, then: "dropped" }));
    expect(dropped.plan.lost).toEqual(expect.arrayContaining([armPath, blades]));
    expect(leftSets(find, dropped).some(({ id }) => id.startsWith(`${row.id}:`))).toBe(false);
    const again = afterPress(find, dropped, { type: "go", set: row.sets[0]?.id ?? "", at: 0 });
    expect(again.plan.lost).not.toContain(armPath);
    expect(nextSet(find, again)?.id).toBe(row.sets[0]?.id);
    expect(again.told?.words.some((words) => words.startsWith("Can be filmed again: Side, full"))).toBe(true);
  });

  it("ends a block early without touching what is done", () => {
    const before = runOf(find, presses(...through(find, setNamed("Set 2"))));
    const after = afterPress(find, before, { type: "station-taken", block: row.id, then: "dropped", at: 0 });
    expect(after.told?.words[0]).toBe("Chest-supported row ends here today.");
    expect(after.plan.lost).toEqual([blades]);
    expect(after.answers.get(armPath)).toEqual({ got: true, set: setNamed("Set 2") });
  });

  it("does an alternate with the same sets, and says to look at the frame", () => {
    const run = runOf(find, presses({ type: "start" }, { type: "station-taken", block: row.id, then: 0 }));
    expect(run.plan.lost).toEqual(demo.coverage.lost);
    expect(run.told?.words[0]).toMatch(/done another way: Dumbbell row with one hand on a bench, same set line\. Look at each frame/);
  });

  it("passes over what stands in front when it jumps within a block, and can go back", () => {
    const jumped = runOf(find, presses({ type: "start" }, { type: "go", set: setNamed("Set 2") }));
    expect(jumped.over.get(setNamed("Set 1"))).toBeNull();
    expect(jumped.order[0]).toBe(row.id);
    const back = afterPress(find, jumped, { type: "go", set: setNamed("Set 1"), at: 0 });
    expect(back.over.has(setNamed("Set 1"))).toBe(false);
    expect(nextSet(find, back)?.id).toBe(setNamed("Set 1"));
  });

  it("hands back what the app takes over whole", () => {
    const list = [...through(find, setNamed("Set 2")), { type: "log", set: setNamed("Set 1"), lifted: { load: 24, reps: 9, rir: 2 } }, { type: "angle-lost", block: row.id, mark: "rear medium" }] satisfies Pressed[];
    const read = readReport(writeReportCode(reportOf(find, runOf(find, presses(...list)))), demoEpisode);
    const { edits, summary } = read.ok ? takeOver(read.report, demoEpisode) : expect.fail(read.message);
    expect(summary.noPlace).toEqual([]);
    const block = applyEdits(demoEpisode, edits).blocks[2];
    expect(block?.actuals).toEqual([{ set: 1, load: 24, reps: 9, rir: 2 }]);
    expect(block?.filming?.filmed).toContainEqual({ shot: blades, set: null, got: false });
    expect(block?.filming?.filmed).toContainEqual({ shot: armPath, set: 3, got: true });
  });
});

describe("the closing", () => {
  const asked = phoneSession(applyEdits(demoEpisode, [{ type: "insert-line", block: demoEpisode.blocks.at(-1)?.id ?? "", at: null, line: { id: "bye", kind: "shot", text: "Front, medium, 12 s: goodbye" } }]));
  const missing = (session: PhoneSession, ...list: Pressed[]): string[] => openClosing({ session, run: runOf(finderOf(session), presses(...list)) });

  it("is missing until its own shot is in the box, or the one nobody planned is ticked", () => {
    const set = asked.blocks.at(-1)?.sets[0]?.id ?? "";
    expect(missing(asked)).toEqual(["bye"]);
    expect(missing(asked, ...done(set))).toEqual(["bye"]);
    expect(missing(asked, ...done(set), { type: "tick", shot: "bye", got: false })).toEqual(["bye"]);
    expect(missing(asked, ...done(set), { type: "tick", shot: "bye", got: true })).toEqual([]);
    expect(missing(demo)).toEqual(["closing"]);
    expect(missing(demo, { type: "extra", what: "closing", got: true })).toEqual([]);
    expect(missing(demo, { type: "extra", what: "closing", got: true }, { type: "extra", what: "closing", got: false })).toEqual(["closing"]);
  });
});

describe("a no while the set still runs", () => {
  it("plans the shot again on what is left", () => {
    const find = finderOf(demo);
    const set = demo.coverage.shots[0]?.set ?? expect.fail("nothing is filmed");
    const shot = demo.coverage.shots[0]?.want ?? "";
    const presses: Press[] = [{ type: "begin", set, at: 0 }, { type: "tick", shot, got: false, at: 1000 }];
    const { plan } = runOf(find, presses);
    expect(plan.lost.includes(shot) || plan.shots.some(({ want }) => want === shot)).toBe(true);
  });
});

/** The demo with two cameras, and a line that names two sets. */
const twoCameras = phoneSession(applyEdits(demoEpisode, [
  { type: "set-facts", fields: { session: { ...demoEpisode.session, cameras: 2 } } },
  { type: "insert-line", block: row.id, at: null, line: { id: "twice", kind: "shot", text: "Front, full, sets 1 and 3: both hands" } },
]));

describe.each([["one camera", demo], ["two cameras", twoCameras]] as const)("whatever is pressed with %s", (_, session: PhoneSession) => {
  const find = finderOf(session);
  const sets = session.blocks.flatMap((block) => block.sets.map(({ id }) => id));
  const shots = session.blocks.flatMap((block) => block.shots.map(({ id }) => id));
  const angles = session.blocks.flatMap((block) => block.marks.map(({ key }) => ({ block: block.id, mark: key })));
  const pick = <T,>(list: readonly T[]) => fc.nat().map((n): T => list[n % list.length] ?? expect.fail("empty"));
  /** What a thumb may do; "next" does the next set, as is most often done. */
  const thumb = fc.oneof(
    { weight: 6, arbitrary: fc.constant("next" as const) },
    { weight: 3, arbitrary: fc.record({ type: fc.constant("tick" as const), shot: pick(shots), got: fc.constantFrom(true, false, null) }) },
    fc.record({ type: fc.constant("go" as const), set: pick(sets) }),
    pick(angles).map((angle) => ({ type: "angle-lost" as const, ...angle })),
    fc.record({ type: fc.constant("station-taken" as const), block: pick(session.blocks.map(({ id }) => id)), then: fc.constantFrom("later" as const, "dropped" as const, 0) }),
    fc.record({ type: fc.constant("begin" as const), set: pick(sets) }),
  );

  it("the plan of the rest is sound, no shot is told twice or forgotten, and nothing filmed is ever lost", { timeout: 120_000 }, () => {
    fc.assert(fc.property(fc.array(thumb, { maxLength: 25 }), (thumbs) => {
      let run: Run = firstRun(find);
      const list: Press[] = [];
      const give = (press: Pressed): void => {
        const whole: Press = { ...press, at: list.length * 1000 };
        run = afterPress(find, run, whole);
        list.push(whole);
      };
      for (const press of thumbs) {
        if (press !== "next") {
          // The page offers no begin while a set runs, and none for a set that is over.
          if (press.type === "begin" && (run.running || run.over.has(press.set))) continue;
          give(press);
        } else {
          const next = run.running?.set ?? nextSet(find, run)?.id;
          if (next === undefined) continue;
          if (!run.running) give({ type: "begin", set: next });
          give({ type: "end", set: next });
        }
        if (list.length === 0 || run.plan === session.coverage) continue;
        expect(coverageViolations(run.problem, { ...run.plan, lost: run.problem.blocks.flatMap(({ wants }) => wants.map(({ id }) => id)).filter((id) => !run.plan.shots.some(({ want }) => want === id)) })).toEqual([]);
        const planned = new Set(run.plan.shots.map(({ want }) => want));
        const waiting = new Set([...openShots(run).map(({ shot }) => shot), ...(run.running ? (run.films.get(run.running.set)?.shots ?? []).filter((shot) => !run.answers.has(shot)) : [])]);
        for (const shot of shots) {
          const got = run.answers.get(shot)?.got === true;
          const isLost = run.plan.lost.includes(shot);
          if (got) expect([planned.has(shot), isLost], shot).toEqual([false, false]);
          else if (!isLost) expect(planned.has(shot) || waiting.has(shot), shot).toBe(true);
          else expect(planned.has(shot), shot).toBe(false);
        }
      }
      // The presses are the state: read again from the first, they come to the same.
      expect(runOf(find, list)).toEqual(run);
      const back = readReport(writeReportCode(reportOf(find, run)), { id: session.episode });
      expect(back).toEqual({ ok: true, report: reportOf(find, run) });
    }), { numRuns: 60, examples: [[[{ type: "begin", set: sets[8] ?? "" }, { type: "tick", shot: session.coverage.shots.find(({ set }) => set === sets[8])?.want ?? shots[0] ?? "", got: false }]]] });
  });
});
