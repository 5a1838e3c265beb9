import { edgeOf } from "../learning/feature-names";
import type { Listened } from "./listen";
import { attended, AWAY } from "./meant";
import { beside, matrixFrom, rowAt, rowsOf, type Matrix } from "./matrix";
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
const ENOUGH = 0.5;

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

/** What is guessed of the figures and exercises around each figure and exercise. @param shares - how surely each figure holds for each exercise, figures by exercises */
function seen({ columns: count, values }: Matrix, figures: readonly Figure[], homes: readonly number[]): (at: number, place: number) => number[] {
  const share = (at: number, place: number): number => (at < 0 || at >= figures.length || place < 0 || place >= count ? 0 : (values[at * count + place] ?? 0));
  const places = Array.from({ length: count }, (_, place) => place);
  const kin = new Map<string, number[]>();
  figures.forEach(({ kind }, at) => kin.set(baseOf(kind), [...(kin.get(baseOf(kind)) ?? []), at]));
  const surest = places.map((place) => figures.reduce((most, _, at) => Math.max(most, share(at, place)), 0));
  const sums = figures.map((_, at) => places.reduce((sum, place) => sum + share(at, place), 0));
  return (at, place) => {
    const others = (kin.get(baseOf(figures[at]?.kind ?? "")) ?? []).filter((other) => other !== at);
    const most = (which: (other: number) => boolean): number => others.reduce((top, other) => (which(other) ? Math.max(top, share(other, place)) : top), 0);
    return [
      most((other) => other < at), most((other) => other > at), most((other) => figures[other]?.value === figures[at]?.value), Math.min(3, others.reduce((sum, other) => sum + share(other, place), 0)),
      share(at - 1, place), share(at + 1, place), share(at, place - 1), share(at, place + 1),
      share(at, place), (sums[at] ?? 0) - share(at, place), share(at, homes[at] ?? -1), surest[place] ?? 0,
    ];
  };
}

/** For each figure the numbers of the exercises it holds for: guessed for each by itself, then once more with all that was guessed in view. @param sought - the exercises, in order */
export function holding(listened: Listened, figures: readonly Figure[], sought: readonly Sought[]): number[][] {
  const { meaning, listener } = listened;
  const homes = figures.map(({ from }) => sought.findLastIndex(({ at }) => at <= from));
  const figure = through(rowsOf(meaning, figures.map(({ from }) => from)), listener.ownFigure);
  const pooled: Matrix = { rows: sought.length, columns: listener.told.weight.rows, values: Float32Array.from(sought.flatMap(({ at, until }) => [...attended(listened, at, until)])) };
  const exercise = through(beside(pooled, rowsOf(meaning, sought.map(({ at }) => at))), listener.ownExercise);
  const signs = signsFor(figures, homes, sought.length);
  const positive = (row: Float32Array): number[] => [...row].map((value) => Math.max(0, value));
  const each = <T>(make: (at: number, place: number) => T): T[] => figures.flatMap((_, at) => sought.map((__, place) => make(at, place)));
  const pairs = matrixFrom(each((at, place) => {
    const { from, kind } = figures[at] as Figure;
    const [own, other, { at: turn }] = [rowAt(figure, at), rowAt(exercise, place), sought[place] as Sought];
    const away = edgeOf(Math.abs(from - turn), AWAY) + (from < turn ? AWAY.length + 1 : 0);
    return [
      ...positive(own), ...positive(other), ...own.map((value, column) => value * (other[column] ?? 0)),
      ...rowAt(listener.ownKind, listener.numbers.kinds.get(kind) ?? 0), ...rowAt(listener.ownOffset, offsetOf(place, homes[at] ?? -1)), ...rowAt(listener.ownAway, away), ...signs(at, place),
    ];
  }));
  const first = twice(pairs, listener.owner).values;
  const around = seen({ rows: figures.length, columns: sought.length, values: first.map(sigmoid) }, figures, homes);
  const second = twice(beside(pairs, matrixFrom(each(around))), listener.again).values;
  return figures.map((_, at) => sought.flatMap((__, place) => {
    const pair = at * sought.length + place;
    return sigmoid((first[pair] ?? 0) + (second[pair] ?? 0)) > ENOUGH ? [place] : [];
  }));
}
