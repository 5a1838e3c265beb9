import { edgeOf } from "../learning/feature-names";
import type { Listened } from "./listen";
import { attended, AWAY } from "./meant";
import { beside, rowAt, rowsOf, type Matrix } from "./matrix";
import { sigmoid, through, twice } from "./network";

/** For which exercises a figure holds: its own, a neighbour, all of a circuit. */

export interface Figure {
  /** Its first word. */
  readonly from: number;
  /** The field it fills, and of which sets: "ramp load". */
  readonly kind: string;
  /** What it says, to be compared with others. */
  readonly value: string;
}

/** An exercise: the word at which the speaker turns to it, and the next turn. */
interface Sought {
  readonly at: number;
  readonly until: number;
}

const FURTHEST = 6;
/** Above this share a figure holds. */
const ENOUGH = 0.65;

const baseOf = (kind: string): string => kind.replace(/^ramp /, "");

/** How far an exercise is from the one a figure is said in, as a row of a table: 0 and 13 for figures said before the first. */
const offsetOf = (place: number, home: number): number => (home < 0 ? (place === 0 ? 0 : 13) : Math.max(-FURTHEST, Math.min(FURTHEST, place - home)) + FURTHEST + 1);

/** What stands between a figure and an exercise, beside the words. */
function signsFor(figures: readonly Figure[], homes: readonly number[], count: number): (at: number, place: number) => number[] {
  const bases = figures.map(({ kind }) => baseOf(kind));
  const said = new Map<string, number[]>();
  bases.forEach((base, at) => said.set(`${base} ${homes[at]}`, [...(said.get(`${base} ${homes[at]}`) ?? []), at]));
  const values = new Map<string, Set<string>>();
  bases.forEach((base, at) => values.set(base, (values.get(base) ?? new Set()).add(figures[at]?.value ?? "")));
  return (at, place) => {
    const [home, base] = [homes[at] ?? -1, bases[at] ?? ""];
    const others = (exercise: number): number[] => (said.get(`${base} ${exercise}`) ?? []).filter((other) => other !== at);
    const mine = others(place);
    let isSilent = true;
    for (let between = Math.max(0, Math.min(place, home)); between <= Math.max(place, home); between += 1) if (between !== home && others(between).length > 0) isSilent = false;
    const many = values.get(base)?.size ?? 0;
    return [mine.length > 0, mine.length > 1, mine.some((other) => figures[other]?.value === figures[at]?.value), isSilent, many === 1, many === 2, home === count - 1, place === count - 1, mine.some((other) => other < at)].map(Number);
  };
}

/** For each figure the numbers of the exercises it holds for. @param sought - the exercises, in order */
export function holding(listened: Listened, figures: readonly Figure[], sought: readonly Sought[]): number[][] {
  const { meaning, listener } = listened;
  const homes = figures.map(({ from }) => sought.findLastIndex(({ at }) => at <= from));
  const figure = through(rowsOf(meaning, figures.map(({ from }) => from)), listener.ownFigure);
  const pooled: Matrix = { rows: sought.length, columns: listener.told.weight.rows, values: Float32Array.from(sought.flatMap(({ at, until }) => [...attended(listened, at, until)])) };
  const exercise = through(beside(pooled, rowsOf(meaning, sought.map(({ at }) => at))), listener.ownExercise);
  const signs = signsFor(figures, homes, sought.length);
  const positive = (row: Float32Array): number[] => [...row].map((value) => Math.max(0, value));
  return figures.map(({ from, kind }, at) => {
    const own = rowAt(figure, at);
    const rows = sought.map(({ at: turn }, place) => {
      const other = rowAt(exercise, place);
      const away = edgeOf(Math.abs(from - turn), AWAY) + (from < turn ? AWAY.length + 1 : 0);
      return [
        ...positive(own), ...positive(other), ...own.map((value, column) => value * (other[column] ?? 0)),
        ...rowAt(listener.ownKind, listener.numbers.kinds.get(kind) ?? 0), ...rowAt(listener.ownOffset, offsetOf(place, homes[at] ?? -1)), ...rowAt(listener.ownAway, away), ...signs(at, place),
      ];
    });
    const scores = twice({ rows: rows.length, columns: rows[0]?.length ?? 0, values: Float32Array.from(rows.flat()) }, listener.owner).values;
    return sought.flatMap((_, place) => (sigmoid(scores[place] ?? 0) > ENOUGH ? [place] : []));
  });
}
