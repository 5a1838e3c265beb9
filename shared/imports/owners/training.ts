import { exerciseById } from "../../exercises";
import type { MarkedTranscript } from "../learning/transcript";
import type { TrueExercise } from "../learning/truth";
import type { Speech } from "../order/speech";
import type { Ordered } from "../schemes/compose";
import { homeOf, kindOf, type Scene } from "./scene";
import { sameIn } from "../schemes/same";
import { isTrueIn } from "./truth";
import { isNamed, type Turned } from "./turned";
import type { Candidate } from "../order/candidates";

const key = (name: string): string => (name.startsWith('"') ? name.toLowerCase().replace(/-/g, " ").replace(/s"$/, '"') : name);

/** The row of the head that an exercise of the running order is, or none. */
export function truthFor(exercises: readonly Turned[], truth: readonly TrueExercise[]): (TrueExercise | null)[] {
  const left = [...truth];
  return exercises.map(({ part }) => {
    const id = part.exercise?.id ?? key(`"${part.title}"`);
    const at = left.findIndex(({ name }) => key(name) === id);
    return at < 0 ? null : (left.splice(at, 1)[0] ?? null);
  });
}

const HOLDS = 1;

/** Figures of one key say the same. */
const keyOf = (statement: Ordered): string => `${kindOf(statement)} ${JSON.stringify(statement.says)}`;

/** Words from a name to the figures that are told of it. */
const TOLD_NEAR = 10;

/** Figures said so many exercises away explain what an exercise does not say itself, at most. */
const APART = 2;

/** What is told once for several exercises holds for the exercises around it of which it is true, one after the other; a weight for any. */
function holdsForRun(statement: Ordered, home: number, rows: readonly (TrueExercise | null)[], labels: number[]): void {
  const holds = rows.map((row) => row !== null && isTrueIn(statement, row));
  if (statement.says.load !== undefined) {
    holds.forEach((is, place) => { if (is) labels[place] = HOLDS; });
    return;
  }
  const first = home >= 0 && holds[home] ? home : holds.findIndex((is, place) => is && place >= home);
  if (first < 0) {
    const last = holds.lastIndexOf(true, Math.max(0, home));
    for (let place = last; place >= 0 && holds[place]; place -= 1) labels[place] = HOLDS;
    return;
  }
  for (let place = first; place < rows.length && holds[place]; place += 1) labels[place] = HOLDS;
  for (let place = first - 1; place >= 0 && home >= 0 && holds[place]; place -= 1) labels[place] = HOLDS;
}

/** For each figure the numbers of the exercises it holds for. @param forSeveral - words at which figures begin that are told once for several exercises */
export function ownersMarked(scene: Scene, truth: readonly TrueExercise[], forSeveral: ReadonlySet<number>, names: readonly Candidate[]): number[][] {
  const { exercises, statements } = scene;
  const homes = statements.map(({ from }) => homeOf(exercises, from));
  const rows = truthFor(exercises, truth);
  const labels = statements.map(() => exercises.map(() => 0));
  // What "same again" takes over is no figure's doing.
  const taken = exercises.map(({ turn }, place) => new Set<string>(sameIn(scene.words, turn, exercises[place + 1]?.turn ?? scene.words.length).flatMap(({ fields }) => fields)));
  statements.forEach((statement, at) => {
    if (forSeveral.has(statement.from)) holdsForRun(statement, homes[at] ?? -1, rows, labels[at] as number[]);
  });
  const keys = statements.map(keyOf);
  const isToldForSeveral = (key: string | undefined, place: number): boolean => labels.some((row, at) => row[place] === HOLDS && keys[at] === key);
  rows.forEach((row, place) => {
    if (row === null) return;
    const right = statements.flatMap((statement, at) => (isTrueIn(statement, row) ? [at] : []));
    const byKind = new Map<string, number[]>();
    for (const at of right) {
      if (forSeveral.has(statements[at]?.from ?? -1)) continue;
      const key = keys[at] ?? "";
      byKind.set(key, [...(byKind.get(key) ?? []), at]);
    }
    for (const list of byKind.values()) {
      const local = list.filter((at) => homes[at] === place);
      const mark = (at: number): void => { (labels[at] as number[])[place] = HOLDS; };
      if (local.length > 0) local.forEach(mark);
      else if (!isToldForSeveral(keys[list[0] ?? 0], place) && !Object.keys(statements[list[0] ?? 0]?.says ?? {}).some((field) => taken[place]?.has(field))) {
        const away = (at: number): number => { const { from } = statements[at] as Ordered; const { turn } = exercises[place] as Turned; return from < turn ? turn - from : from - (exercises[place + 1]?.turn ?? turn); };
        const [best] = list.filter((at) => Math.abs((homes[at] ?? 0) - place) <= APART || (homes[at] ?? 0) < 0).sort((a, b) => away(a) - away(b));
        if (best !== undefined) mark(best);
      }
    }
  });
  statements.forEach((statement, at) => {
    if (forSeveral.has(statement.from)) return;
    // Figures right after the name of another exercise are of that one: "squats were three of five, rows three of ten".
    const near = names.findLast(({ span }) => span.to <= statement.from && statement.from - span.to <= TOLD_NEAR);
    const place = near ? exercises.findIndex((exercise) => isNamed(near, exercise)) : -1;
    const row = rows[place];
    if (row && place !== homes[at] && isTrueIn(statement, row)) labels[at] = exercises.map((_, other) => (other === place ? HOLDS : 0));
  });
  return labels.map((row) => row.flatMap((label, place) => (label === HOLDS ? [place] : [])));
}

/** No, surely, or perhaps: of several figures that say the same of an exercise, nobody can tell which one holds. */
export const [NEVER, SURELY, PERHAPS] = [0, 1, 2];

/**
 * How each figure holds for each exercise. What an exercise says itself surely holds; where figures told for several exercises say
 * the same, as the rounds of two circuits may, one of them does.
 * @param owners - as ownersMarked gives them
 * @param forSeveral - words at which figures begin that are told once for several exercises
 */
export function holdingMarked({ exercises, statements }: Scene, owners: readonly (readonly number[])[], forSeveral: ReadonlySet<number>): number[][] {
  const keys = statements.map(keyOf);
  return statements.map((statement, at) => exercises.map((_, place) => {
    const holds = (other: number): boolean => owners[other]?.includes(place) === true;
    if (!holds(at)) return NEVER;
    const isOwn = homeOf(exercises, statement.from) === place && !forSeveral.has(statement.from);
    return isOwn || !keys.some((key, other) => other !== at && key === keys[at] && holds(other)) ? SURELY : PERHAPS;
  }));
}

/** The scene of a transcript as its marks and its head tell it; null where they do not tell of the same exercises. @param turns - marked, of exercises */
export function markedScene(turns: MarkedTranscript["turns"], truth: readonly TrueExercise[], { statements, words }: Speech): Scene | null {
  if (turns.length === 0 || turns.length !== truth.length) return null;
  const exercises = turns.map(({ at }, place): Turned => {
    const name = truth[place]?.name ?? "";
    const exercise = exerciseById(name);
    const title = exercise === null ? name.replace(/"/g, "") : "";
    return { turn: at, at, part: { kind: "exercise", exercise, title, named: null, begins: { turn: at, name: at }, said: "", pair: null, from: 0, to: 0 } };
  });
  return { exercises, statements, words };
}
