import type { Example } from "../learning/train";
import type { TrueExercise } from "../learning/truth";
import type { Ordered } from "../schemes/compose";
import { featuresFor, stepsFor } from "./features";
import { reckoned, type Scene } from "./scene";
import { HOLDS } from "./owners";
import { sameIn } from "../schemes/same";
import { isTrueIn } from "./truth";
import type { Turned } from "./turned";

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

/** Figures said so many exercises away explain what an exercise does not say itself, at most. */
const APART = 2;

/** What is said of a whole circuit holds for the exercises around it of which it is true, one after the other; a weight for any. */
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

/** A row for each figure: for which exercises it holds. */
export function ownerExamples(scene: Scene, truth: readonly TrueExercise[]): Example[] {
  const { exercises, statements } = scene;
  const all = reckoned(scene);
  const rows = truthFor(exercises, truth);
  if (exercises.length === 0) return [];
  const labels = statements.map(() => exercises.map(() => 0));
  // What "same again" takes over is no figure's doing.
  const taken = exercises.map(({ turn }, place) => new Set<string>(sameIn(scene.words, turn, exercises[place + 1]?.turn ?? scene.words.length).flatMap(({ fields }) => fields)));
  rows.forEach((row, place) => {
    if (row === null) return;
    const right = statements.flatMap((statement, at) => (isTrueIn(statement, row) ? [at] : []));
    const byKind = new Map<string, number[]>();
    for (const at of right) {
      if (statements[at]?.about === "circuit") continue;
      const name = `${all.kinds[at] ?? ""} ${JSON.stringify(statements[at]?.says)}`;
      byKind.set(name, [...(byKind.get(name) ?? []), at]);
    }
    for (const list of byKind.values()) {
      const local = list.filter((at) => all.homes[at] === place);
      const mark = (at: number): void => { (labels[at] as number[])[place] = HOLDS; };
      if (local.length > 0) local.forEach(mark);
      else if (!Object.keys(statements[list[0] ?? 0]?.says ?? {}).some((field) => taken[place]?.has(field))) {
        const away = (at: number): number => { const { from } = statements[at] as Ordered; const { turn } = exercises[place] as Turned; return from < turn ? turn - from : from - (exercises[place + 1]?.turn ?? turn); };
        const [best] = list.filter((at) => Math.abs((all.homes[at] ?? 0) - place) <= APART || (all.homes[at] ?? 0) < 0).sort((a, b) => away(a) - away(b));
        if (best !== undefined) mark(best);
      }
    }
  });
  statements.forEach((statement, at) => {
    if (statement.about === "circuit") holdsForRun(statement, all.homes[at] ?? -1, rows, labels[at] as number[]);
  });
  return statements.map((_, at) => ({ features: featuresFor(scene, all, at), steps: stepsFor(scene, all.kinds[at] ?? ""), labels: labels[at] as number[] }));
}
