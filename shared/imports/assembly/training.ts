import type { Example } from "../learning/train";
import type { TrueExercise } from "../learning/truth";
import { kindOf, type Scene } from "../owners/scene";
import { truthFor } from "../owners/training";
import { isTrueOf } from "../owners/truth";
import { hasWork, type Ordered } from "../schemes/compose";
import { isOwn } from "../schemes/read-schemes";
import type { Scheme } from "../../training";
import type { Word } from "../types";
import { ASIDE, BEGINS, FOR_ALL, GOES_ON } from "./assembly";
import { featuresOf, stepsOf } from "./features";

/** What a set consists of or is counted by; the rest, the tempo or the effort of a set does not begin one. */
const begins = ({ says }: Ordered): boolean => hasWork(says) || says.sets !== undefined || says.load !== undefined;

/** What a figure that is told again in the same line is worth, what a line that nothing tells of costs, and one that begins with its rest. */
const [AGAIN, UNTOLD, LED] = [0.6, 0.1, 0.3];

/** Is a figure true of all lines: of each, counted over all, or the rest that is told between single sets? */
function isForAll(statement: Ordered, lines: readonly Scheme[], right: readonly number[]): boolean {
  if (lines.length < 2) return false;
  if (right.length === lines.length || (right.length === 0 && statement.says.sets === lines.reduce((sum, { sets }) => sum + (sets ?? 0), 0))) return true;
  const rests = new Set(lines.flatMap(({ restSeconds }) => restSeconds ?? []));
  return statement.says.restSeconds !== undefined && right.length > 0 && rests.size === 1 && lines.every(({ sets }) => sets === 1);
}

interface Way {
  readonly worth: number;
  readonly labels: readonly number[];
}

/** The places of figures in lines that are told one after the other, so that as many as can be find theirs. */
function aligned(own: readonly Ordered[], lines: readonly Scheme[]): readonly number[] {
  const right = own.map((statement) => lines.flatMap((line, at) => (isTrueOf(statement, [line]) ? [at] : [])));
  const forAll = own.map((statement, at) => isForAll(statement, lines, right[at] ?? []));
  const isToldAgain = (at: number, line: number, since: number): boolean =>
    own.slice(0, at).some((other, place) => place >= since && kindOf(other) === kindOf(own[at] as Ordered) && right[place]?.includes(line) === true);
  const known = new Map<string, Way>();
  // The best way on from a figure, with a line open since another one.
  const onFrom = (at: number, line: number, since: number): Way => {
    const statement = own[at];
    if (statement === undefined) return { worth: 0, labels: [] };
    const key = `${at} ${line} ${since}`;
    const found = known.get(key);
    if (found) return found;
    const way = (label: number, worth: number, next: Way): Way => ({ worth: worth + next.worth, labels: [label, ...next.labels] });
    const later = (right[at] ?? []).filter((other) => other > line);
    const ways = forAll[at] ? [way(FOR_ALL, 0, onFrom(at + 1, line, since))] : [
      ...(right[at]?.includes(line) ? [way(GOES_ON, isToldAgain(at, line, since) ? AGAIN : 1, onFrom(at + 1, line, since))] : []),
      ...later.map((other) => way(BEGINS, 1 - UNTOLD * (other - line - 1) - (begins(statement) ? 0 : LED), onFrom(at + 1, other, at))),
      way(ASIDE, 0, onFrom(at + 1, line, since)),
    ];
    const best = ways.reduce((top, each) => (each.worth > top.worth ? each : top));
    known.set(key, best);
    return best;
  };
  return onFrom(0, -1, 0).labels;
}

/** The figures of one exercise and where each belongs, told from the set lines of the head. */
export function assemblyExample(own: readonly Ordered[], { sets }: TrueExercise, words: readonly Word[]): Example {
  const labels = own.map(() => ASIDE);
  for (const isRamp of [true, false]) {
    const places = own.flatMap(({ about }, at) => ((about === "ramp-up") === isRamp ? [at] : []));
    const lines = sets.filter(({ role }) => (role === "ramp-up") === isRamp).map(({ scheme }) => scheme);
    aligned(places.map((at) => own[at] as Ordered), lines).forEach((label, at) => { labels[places[at] ?? 0] = label; });
  }
  return { features: featuresOf(own, words), steps: stepsOf(own), labels };
}

/** A row for each exercise of a transcript: its own figures. */
export function assemblyExamples(scene: Scene, owners: readonly (readonly number[])[], truth: readonly TrueExercise[]): Example[] {
  return truthFor(scene.exercises, truth).flatMap((row, place) => {
    const own = scene.statements.filter((_, at) => isOwn(scene, owners, at, place));
    return row === null || own.length === 0 ? [] : [assemblyExample(own, row, scene.words)];
  });
}
