import type { Floor, FloorSide } from "../../../shared/episode";
import type { BlockFloor, Spot } from "../../../shared/filming";

/** Right and down, in units of the drawing. */
export type Point = readonly [x: number, y: number];
/** From one end to the other. */
export type WallLine = readonly [x1: number, y1: number, x2: number, y2: number];
export interface Strip { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

/** Of a mark's circle. */
export const MARK_RADIUS = 12;

/** How a station is drawn: pixels of the drawing, where the person stands in it, and pixels a metre. */
export interface PlanScale {
  readonly width: number;
  readonly height: number;
  readonly x: number;
  readonly y: number;
  readonly metre: number;
}

/** Pixels. The drawing grows with its column; these are its own units. */
const BOX = { width: 380, height: 320, edge: 34 } as const;
/** Room round the marks in which one can still be dragged, and the least that is shown; metres. */
const ROUND = 0.6;
const LEAST = 1.4;
/** A wall further out than this from everything else is not drawn; metres. */
const FAR_WALL = 2.5;

/** How far the drawing reaches to each side, metres. */
function reachOf({ marks, subject, room }: BlockFloor): Readonly<Record<FloorSide, number>> {
  const most = (of: (spot: Spot) => number, own: number): number => Math.max(LEAST, own + 0.4, ...marks.map(({ spot }) => of(spot) + ROUND));
  const reach = {
    ahead: most(([, ahead]) => ahead, subject.halfLong), behind: most(([, ahead]) => -ahead, subject.halfLong),
    right: most(([right]) => right, subject.halfWide), left: most(([right]) => -right, subject.halfWide),
  };
  const withWall = (side: FloorSide): number => {
    const wall = room?.walls[side] ?? null;
    return wall !== null && wall > reach[side] && wall < reach[side] + FAR_WALL ? wall : reach[side];
  };
  return { ahead: withWall("ahead"), behind: withWall("behind"), left: withWall("left"), right: withWall("right") };
}

/** The scale at which a whole station fits, the same for as long as nothing is moved. */
export function planScale(floor: BlockFloor): PlanScale {
  const reach = reachOf(floor);
  const metre = Math.min((BOX.width - 2 * BOX.edge) / (reach.left + reach.right), (BOX.height - 2 * BOX.edge) / (reach.ahead + reach.behind));
  const [wide, tall] = [(reach.left + reach.right) * metre, (reach.ahead + reach.behind) * metre];
  return { width: BOX.width, height: BOX.height, metre, x: (BOX.width - wide) / 2 + reach.left * metre, y: (BOX.height - tall) / 2 + reach.ahead * metre };
}

/** A spot on the floor as a point of the drawing: the person faces up. */
export const toPoint = ({ x, y, metre }: PlanScale, [right, ahead]: Spot): Point => [x + right * metre, y - ahead * metre];

/** A point of the drawing as a spot on the floor. */
export const toSpot = ({ x, y, metre }: PlanScale, [px, py]: Point): Spot => [(px - x) / metre, (y - py) / metre];

/** The nearest point at which a mark is still drawn whole. */
export function within({ width, height }: PlanScale, [x, y]: Point): Point {
  const inside = (value: number, most: number): number => Math.min(most - MARK_RADIUS - 2, Math.max(MARK_RADIUS + 2, value));
  return [inside(x, width), inside(y, height)];
}

type Edges = Readonly<Record<FloorSide, number>>;

/** Where each wall crosses the drawing: a height for those ahead and behind, a width for those at the sides; null when it lies outside or is not known. */
function wallsAt(scale: PlanScale, { walls }: Floor): Readonly<Record<FloorSide, number | null>> {
  const { x, y, metre, width, height } = scale;
  const at = (side: FloorSide, from: number, sign: 1 | -1, most: number): number | null => {
    const wall = walls[side];
    const value = wall === null ? null : from + sign * wall * metre;
    return value !== null && value > 1 && value < most - 1 ? value : null;
  };
  return { ahead: at("ahead", y, -1, height), behind: at("behind", y, 1, height), left: at("left", x, -1, width), right: at("right", x, 1, width) };
}

/** The room as far as it is drawn: its walls, and the edges of the drawing where there is none. */
function edgesOf(scale: PlanScale, room: Floor): Edges {
  const { ahead, behind, left, right } = wallsAt(scale, room);
  return { ahead: ahead ?? 0, behind: behind ?? scale.height, left: left ?? 0, right: right ?? scale.width };
}

/** The line of a wall, as long as the room is; null when it lies outside or nobody measured it. */
export function wallLine(scale: PlanScale, room: Floor, side: FloorSide): WallLine | null {
  const at = wallsAt(scale, room)[side];
  if (at === null) return null;
  const { ahead, behind, left, right } = edgesOf(scale, room);
  return side === "ahead" || side === "behind" ? [left, at, right, at] : [at, ahead, at, behind];
}

/** How much of the drawing an aisle takes; it runs along its wall, or along the edge. */
const AISLE = 15;

/** Where people walk past. */
export function aisleStrip(scale: PlanScale, room: Floor, side: FloorSide): Strip {
  const { ahead, behind, left, right } = edgesOf(scale, room);
  const across = { x: left, width: right - left, height: AISLE };
  const along = { y: ahead, width: AISLE, height: behind - ahead };
  return { ahead: { ...across, y: ahead }, behind: { ...across, y: behind - AISLE }, left: { ...along, x: left }, right: { ...along, x: right - AISLE } }[side];
}

/** Where the bar of one metre begins: bottom left, clear of an aisle there. */
export function scaleBar(scale: PlanScale, room: Floor | null): Point {
  const [x, y] = [8, scale.height - 9];
  const strip = room?.aisle === "behind" || room?.aisle === "left" ? aisleStrip(scale, room, room.aisle) : null;
  if (!strip) return [x, y];
  if (room?.aisle === "left") return [strip.x < AISLE ? x + AISLE : x, y];
  return [x, strip.y + AISLE > y - AISLE ? strip.y - 8 : y];
}
