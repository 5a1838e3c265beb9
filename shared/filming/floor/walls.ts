import { FLOOR_SIDES, type Floor, type FloorSide } from "../../episode";
import { between, turned } from "../bearings";
import { focalLength, LENSES, type Lens } from "../lens";
import { standFor, type FilmingSetup } from "../stand";
import { SHOT_SIZES, type ShotSize } from "../types";
import { edgeOf, roomOf, SIDE_BEARINGS } from "./extent";
import { detailAt, onLine, type Handed, type Placed } from "./place";
import type { Extent, RoomNeeded } from "./types";
import { bearingInWords, either, lensInWords, metres, SIDE_WORDS } from "./words";

/** Farther than most gyms have free floor in a line, metres. Common practice, no source. */
const FAR = 8;
/** Marks closer to the aisle's direction than this stand in people's way. Degrees. */
const IN_AISLE = 45;

const upToTenth = (value: number): number => Math.ceil(value * 10 - 1e-6) / 10;

/** How much too near the nearest wall is for a mark; none when it fits. */
export function shortfall(room: Floor | null, bearing: number, distance: number): { readonly side: FloorSide; readonly by: number } | null {
  if (!room) return null;
  const short = FLOOR_SIDES.flatMap((side) => {
    const wall = room.walls[side];
    const by = wall === null ? 0 : roomOf(side, bearing, distance) - wall;
    return by > 1e-9 ? [{ side, by }] : [];
  });
  return short.sort((a, b) => b.by - a.by)[0] ?? null;
}

/** Whether a mark stands where people walk past; a detail is filmed close up, out of their way. */
export const inAisle = (room: Floor | null, { bearing, size }: Pick<Placed, "bearing" | "size">): boolean =>
  room !== null && room.aisle !== null && size !== "insert" && between(bearing, SIDE_BEARINGS[room.aisle]) < IN_AISLE;

/** Whether a mark stands inside the movement. */
const inReach = (subject: Extent, { bearing, distance }: Pick<Placed, "bearing" | "distance">): boolean => distance < edgeOf(subject, bearing) - 1e-9;

/** The least room for all marks and the movement itself, to the next tenth. */
export function roomFor(subject: Extent, marks: readonly Placed[]): RoomNeeded {
  const need = (side: FloorSide): number =>
    upToTenth(Math.max(side === "left" || side === "right" ? subject.halfWide : subject.halfLong, ...marks.map(({ bearing, distance }) => roomOf(side, bearing, distance))));
  return { ahead: need("ahead"), behind: need("behind"), left: need("left"), right: need("right") };
}

interface Other { readonly words: string }

/** Where a mark would stand with another lens or size, on its bearing. */
function distanceWith(setup: FilmingSetup, mark: Placed, own: { readonly lens?: Lens; readonly size?: ShotSize }): number {
  const size = own.size ?? mark.size;
  return standFor({ ...setup, angle: mark.angle, size, ...(own.lens === undefined ? {} : { lens: own.lens }) }).distance + detailAt(setup, size, mark.bearing);
}

/** The phone's lenses that change the distance in the wanted direction and fit, the nearest in focal length first. */
function lenses(setup: FilmingSetup, mark: Placed, longer: boolean, fits: (distance: number) => boolean): Other[] {
  const own = focalLength(setup.lens);
  return (Object.keys(LENSES) as (keyof typeof LENSES)[])
    .filter((lens) => (longer ? LENSES[lens] > own : LENSES[lens] < own))
    .sort((a, b) => (longer ? 1 : -1) * (LENSES[a] - LENSES[b]))
    .map((lens) => ({ lens, distance: distanceWith(setup, mark, { lens }) }))
    .filter(({ distance }) => fits(distance))
    .slice(0, 1)
    .map(({ lens, distance }) => ({ words: `take ${lensInWords(lens)} and stand at ${metres(distance)}` }));
}

function sizes(setup: FilmingSetup, mark: Placed, tighter: boolean, fits: (distance: number) => boolean): Other[] {
  const own = SHOT_SIZES.indexOf(mark.size);
  // A whole body is never replaced by a close-up: it would be another shot.
  const others = SHOT_SIZES.filter((size, at) => size !== "insert" && mark.size !== "insert" && (tighter ? at > own && size !== "close-up" : at < own));
  return (tighter ? others : [...others].reverse())
    .map((size) => ({ size, distance: distanceWith(setup, mark, { size }) }))
    .filter(({ distance }) => fits(distance))
    .slice(0, 1)
    .map(({ size, distance }) => ({ words: `frame it ${size} from ${metres(distance)}` }));
}

/** The nearest bearing with room, on the cameras' side of the line if there is one. */
function bearings(room: Floor | null, mark: Placed, handed: Handed): Other[] {
  const turns = Array.from({ length: 24 }, (_, index) => turned(index * 15)).filter((bearing) => between(bearing, mark.bearing) > 5);
  const free = turns.filter((bearing) => !shortfall(room, bearing, mark.distance) && !inAisle(room, { ...mark, bearing }));
  const across = (bearing: number): number => (onLine(bearing) || Math.sign(bearing) === handed ? 0 : 1);
  const [nearest] = free.sort((a, b) => across(a) - across(b) || between(a, mark.bearing) - between(b, mark.bearing) || Math.abs(a) - Math.abs(b) || b - a);
  return nearest === undefined ? [] : [{ words: `move it to ${bearingInWords(nearest)}` }];
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** "Take the ultra-wide lens, or move it." */
const advice = (others: readonly Other[]): string => (others.length === 0 ? "Film it somewhere else, or leave it out." : `${capital(either(others.map(({ words }) => words)))}.`);

/** "mark A (side, full)" */
export const nameOf = ({ letter, angle, size }: Pick<Placed, "letter" | "angle" | "size">): string => `mark ${letter} (${angle === size ? angle : `${angle}, ${size}`})`;

/** What stands in a mark's way on the floor, in whole sentences, and what to do. */
export function placeProblems(room: Floor | null, setup: FilmingSetup, subject: Extent, mark: Placed, handed: Handed): string[] {
  const problems: string[] = [];
  const name = capital(nameOf(mark));
  const short = shortfall(room, mark.bearing, mark.distance);
  if (short) {
    const fits = (distance: number): boolean => !shortfall(room, mark.bearing, distance) && (mark.size === "insert" || distance >= edgeOf(subject, mark.bearing));
    problems.push(`${name}: the room is ${metres(upToTenth(short.by))} too short ${SIDE_WORDS[short.side]} for the phone at ${metres(mark.distance)} and you behind it. ${advice([...lenses(setup, mark, false, fits), ...sizes(setup, mark, true, fits), ...bearings(room, mark, handed)])}`);
  } else if (!mark.isMoved && mark.distance > FAR) {
    problems.push(`${name} stands ${metres(mark.distance)} away, farther than most gyms have free floor. ${advice([...lenses(setup, mark, false, (distance) => distance <= FAR), ...sizes(setup, mark, true, (distance) => distance <= FAR)])}`);
  }
  if (mark.size !== "insert" && inReach(subject, mark)) {
    const fits = (distance: number): boolean => distance >= edgeOf(subject, mark.bearing) && !shortfall(room, mark.bearing, distance);
    problems.push(`${name} stands inside the movement, which needs ${metres(upToTenth(edgeOf(subject, mark.bearing)))} there. ${advice([...lenses(setup, mark, true, fits), ...sizes(setup, mark, false, fits)])}`);
  }
  if (room?.aisle && inAisle(room, mark)) {
    problems.push(`${name} stands in the aisle ${SIDE_WORDS[room.aisle]}, where people walk past. ${advice(bearings(room, mark, handed))}`);
  }
  return problems;
}

/** Walls that the movement itself would meet. */
export function tightWalls(room: Floor | null, subject: Extent): string[] {
  if (!room) return [];
  return FLOOR_SIDES.flatMap((side) => {
    const wall = room.walls[side];
    const need = side === "left" || side === "right" ? subject.halfWide : subject.halfLong;
    return wall !== null && need > wall + 1e-9 ? [`The movement itself needs ${metres(upToTenth(need))} ${SIDE_WORDS[side]}, and the wall is at ${metres(wall)}: train it elsewhere, or measure again.`] : [];
  });
}
