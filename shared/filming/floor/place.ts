import type { Block, PlacedMark } from "../../episode";
import { between, homeBearing, turned } from "../bearings";
import type { Mark } from "../marks";
import { standAt, standFor, type FilmingSetup } from "../stand";
import { edgeOf, personExtent } from "./extent";
import type { FloorMark } from "./types";

/** Marks on one bearing are fanned out by so many degrees, to one side and the other: less would put a circle on its neighbour's distance. */
const FAN = 34;
/** Two marks nearer than this in both bearing and distance are in each other's way. Degrees, metres. */
const APART = { degrees: 20, metres: 0.8 } as const;
/** A camera so near the line stands on it. Degrees. */
const NEUTRAL = 10;

/** +1 for cameras on the subject's left, -1 for the right. */
export type Handed = 1 | -1;

export type Placed = Pick<FloorMark, "letter" | "mark" | "angle" | "size" | "bearing" | "distance" | "stand" | "isMoved">;

export const onLine = (bearing: number): boolean => Math.abs(bearing) <= NEUTRAL || Math.abs(bearing) >= 180 - NEUTRAL;

/** A detail lies at the edge of the person towards the camera; everything else is framed round the middle. */
export const detailAt = (setup: FilmingSetup, size: Placed["size"], bearing: number): number => (size === "insert" ? edgeOf(personExtent(setup), bearing) : 0);

/** Where the coach put marks, by name; of two places for one mark the last counts. */
const movedOf = (block: Block): ReadonlyMap<string, PlacedMark> => new Map((block.filming?.marks ?? []).map((placed) => [placed.mark, placed]));

/** Names of places in the file that belong to no mark. */
export function strangers(block: Block, marks: readonly Mark[]): string[] {
  const known = new Set(marks.map(({ key }) => key));
  return [...movedOf(block).keys()].filter((name) => !known.has(name));
}

/** The side most moved marks stand on; null when none is off the line. */
export function movedSide(block: Block, marks: readonly Mark[]): Handed | null {
  const moved = movedOf(block);
  const sum = marks.map((mark) => moved.get(mark.key)?.bearing ?? 0).filter((bearing) => !onLine(turned(bearing))).reduce((total, bearing) => total + Math.sign(turned(bearing)), 0);
  return sum === 0 ? null : sum > 0 ? 1 : -1;
}

function freeBearing(home: number, distance: number, placed: readonly Placed[], handed: Handed): number {
  const clear = (bearing: number): boolean => placed.every((other) => between(other.bearing, bearing) >= APART.degrees || Math.abs(other.distance - distance) > APART.metres);
  const fanned = [0, 1, -1, 2, -2, 3, -3].map((step) => turned(handed * (home + step * FAN)));
  const free = fanned.filter(clear);
  // On the cameras' side of the line if at all possible.
  return free.find((bearing) => onLine(bearing) || Math.sign(bearing) === handed) ?? free[0] ?? turned(handed * home);
}

/** Gives every mark its place: where the coach put it, else at its angle's bearing, on one side of the line. */
export function place(block: Block, marks: readonly Mark[], setup: FilmingSetup, handed: Handed): Placed[] {
  const moved = movedOf(block);
  const placed: Placed[] = [];
  const named = marks.map((mark) => ({ letter: mark.letter, mark: mark.key, angle: mark.angle ?? ("side" as const), size: mark.size ?? (mark.angle === "insert" ? ("insert" as const) : ("full" as const)) }));
  // Marks that were moved keep their places; the others make room for them.
  for (const one of named) {
    const own = moved.get(one.mark);
    if (!own) continue;
    const bearing = turned(own.bearing);
    placed.push({ ...one, bearing, distance: own.distance, isMoved: true, stand: standAt(setup, one, Math.max(0.1, own.distance - detailAt(setup, one.size, bearing))) });
  }
  for (const one of named) {
    if (moved.has(one.mark)) continue;
    const stand = standFor({ ...setup, ...one });
    const home = homeBearing(one.size === "insert" && one.angle === "insert" ? "insert" : one.angle);
    const bearing = freeBearing(home, stand.distance + detailAt(setup, one.size, handed * home), placed, handed);
    placed.push({ ...one, bearing, distance: stand.distance + detailAt(setup, one.size, bearing), isMoved: false, stand });
  }
  return named.flatMap(({ mark }) => placed.find((each) => each.mark === mark) ?? []);
}
