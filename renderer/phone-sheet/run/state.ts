import type { PhoneBlock, PhoneSession, PhoneSet, PhoneShot } from "../../../shared/exports";
import type { CoveragePlan, CoverageProblem } from "../../../shared/filming";
import type { Lifted, TakenAnswer } from "./presses";

/** What a set that is over, or under way, has filmed. */
export interface Filming {
  readonly marks: readonly string[];
  readonly shots: readonly string[];
}

export interface Run {
  readonly startedAt: number | null;
  readonly finishedAt: number | null;
  /** Every block, in the order they will be done. */
  readonly order: readonly string[];
  readonly taken: ReadonlyMap<string, TakenAnswer>;
  /** Sets that are over, with their milliseconds; null for one that was passed over. */
  readonly over: ReadonlyMap<string, { readonly from: number; readonly to: number } | null>;
  readonly running: { readonly set: string; readonly from: number } | null;
  /** The rest after a set; lasts until the next one begins. */
  readonly resting: { readonly after: string; readonly from: number } | null;
  /** Where the coach wants to go next; else the first set that is left. */
  readonly wanted: string | null;
  /** Where the cameras stand, and for which block. */
  readonly cameras: { readonly block: string; readonly marks: readonly string[] } | null;
  readonly films: ReadonlyMap<string, Filming>;
  /** In the box on which set (null: on none), or answered with no. */
  readonly answers: ReadonlyMap<string, { readonly got: boolean; readonly set: string | null }>;
  /** "block mark" */
  readonly lostAngles: ReadonlySet<string>;
  readonly lifted: ReadonlyMap<string, Lifted>;
  readonly extras: ReadonlySet<string>;
  readonly withoutClosing: boolean;
  /** What is left of the session, and its plan. */
  readonly problem: CoverageProblem;
  readonly plan: CoveragePlan;
  /** What the last change did to the plan, in sentences, and whether an answer about a shot was that change; null when there is nothing to say. */
  readonly told: { readonly words: readonly string[]; readonly byAnswer: boolean } | null;
}

export const angleKey = (block: string, mark: string): string => `${block} ${mark}`;

/** Look-ups in the session, by id. */
export interface Finder {
  readonly session: PhoneSession;
  readonly block: (id: string) => PhoneBlock;
  readonly blockOf: (set: string) => PhoneBlock;
  readonly set: (id: string) => PhoneSet;
  readonly shot: (id: string) => PhoneShot;
  readonly blockOfShot: (shot: string) => PhoneBlock;
}

export function finderOf(session: PhoneSession): Finder {
  const blocks = new Map(session.blocks.map((block) => [block.id, block]));
  const sets = new Map(session.blocks.flatMap((block) => block.sets.map((set) => [set.id, { set, block }] as const)));
  const shots = new Map(session.blocks.flatMap((block) => block.shots.map((shot) => [shot.id, { shot, block }] as const)));
  const found = <T>(value: T | undefined, id: string): T => {
    if (value === undefined) throw new Error(`finderOf: the session has no "${id}"`);
    return value;
  };
  return {
    session,
    block: (id) => found(blocks.get(id), id),
    blockOf: (id) => found(sets.get(id), id).block,
    set: (id) => found(sets.get(id), id).set,
    shot: (id) => found(shots.get(id), id).shot,
    blockOfShot: (id) => found(shots.get(id), id).block,
  };
}

export function firstRun({ session }: Finder): Run {
  return {
    startedAt: null, finishedAt: null, order: session.blocks.map(({ id }) => id), taken: new Map(), over: new Map(), running: null, resting: null, wanted: null, cameras: null,
    films: new Map(), answers: new Map(), lostAngles: new Set(), lifted: new Map(), extras: new Set(), withoutClosing: false, problem: session.problem, plan: session.coverage, told: null,
  };
}

/** Sets still to be done, in their order; the one under way is not among them. */
export function leftSets(find: Finder, run: Run): PhoneSet[] {
  return run.order
    .filter((id) => run.taken.get(id) !== "dropped")
    .flatMap((id) => find.block(id).sets.filter((set) => !run.over.has(set.id) && set.id !== run.running?.set));
}

/** The set to be done next; null when none is left. */
export function nextSet(find: Finder, run: Run): PhoneSet | null {
  const left = leftSets(find, run);
  return left.find(({ id }) => id === run.wanted) ?? left[0] ?? null;
}

/** Shots that a set has filmed and nobody has answered for. */
export function openShots(run: Run): { readonly shot: string; readonly set: string }[] {
  return [...run.films].filter(([set]) => run.over.has(set)).flatMap(([set, { shots }]) => shots.filter((shot) => !run.answers.has(shot)).map((shot) => ({ shot, set })));
}

/** What a set is about to film, by the plan. */
export function filmingOf(run: Run, set: string): Filming {
  return { marks: run.plan.stands.filter((stand) => stand.set === set).map(({ mark }) => mark), shots: run.plan.shots.filter((shot) => shot.set === set).map(({ want }) => want) };
}
