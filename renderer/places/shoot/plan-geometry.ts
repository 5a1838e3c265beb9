import type { FloorSide } from "../../../shared/episode";
import type { BlockFloor, Spot } from "../../../shared/filming";

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
export const toPoint = ({ x, y, metre }: PlanScale, [right, ahead]: Spot): readonly [number, number] => [x + right * metre, y - ahead * metre];

/** A point of the drawing as a spot on the floor. */
export const toSpot = ({ x, y, metre }: PlanScale, [px, py]: readonly [number, number]): Spot => [(px - x) / metre, (y - py) / metre];

/** One metre towards each side. */
const TOWARDS: Readonly<Record<FloorSide, Spot>> = { ahead: [0, 1], behind: [0, -1], left: [-1, 0], right: [1, 0] };

/** The line of a wall across the drawing; null when it lies outside. */
export function wallLine(scale: PlanScale, side: FloorSide, distance: number): readonly [number, number, number, number] | null {
  const { width, height } = scale;
  const isAcross = side === "ahead" || side === "behind";
  const [right, ahead] = TOWARDS[side];
  const [x, y] = toPoint(scale, [right * distance, ahead * distance]);
  if (isAcross) return y > 1 && y < height - 1 ? [0, y, width, y] : null;
  return x > 1 && x < width - 1 ? [x, 0, x, height] : null;
}
