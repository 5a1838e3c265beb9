import { FLOOR_SIDES } from "../../episode";
import type { Angle } from "../../exercises";
import { between, homeBearing, polarOf, spotAt, turned, type Spot } from "../bearings";
import { standAt, standFor, STEP_METRES, type FilmingSetup } from "../stand";
import { SHOT_SIZES, type ShotSize, type Stand } from "../types";
import { edgeOf, towards, TRIPOD } from "./extent";
import { detailAt } from "./place";
import { frameAt } from "./shows";
import type { BlockFloor } from "./types";

/** Bearings a mark snaps to, degrees; and how near a framed distance has to be to win over half a walking step, metres. */
const TURN = 15;
const NEAR = 0.2;
/** Clear of the movement by so much, metres. Common practice, no source. */
const CLEAR = 0.1;
/** The farthest a mark may be dragged, metres: as far as a file may hold. */
const FARTHEST = 50;

/** Where a dragged mark comes to rest. Degrees from ahead towards the left; metres from the middle of the subject. */
export interface Snapped {
  readonly bearing: number;
  readonly distance: number;
  readonly shows: string;
  readonly stand: Stand;
}

const millimetre = (value: number): number => Math.round(value * 1000) / 1000;

/** "side full" as an angle and a size; a name that is none is filmed from the side, full. */
function viewOf(floor: BlockFloor, markKey: string): { readonly angle: Angle; readonly size: ShotSize } {
  const mark = floor.marks.find((each) => each.mark === markKey);
  return mark ? { angle: mark.angle, size: mark.size } : { angle: "side", size: "full" };
}

/** From where to where a mark may stand on a bearing: clear of the movement, with the tripod inside the walls. */
function range(floor: BlockFloor, size: ShotSize, bearing: number): readonly [nearest: number, farthest: number] {
  const unit = spotAt(bearing, 1);
  const walls = FLOOR_SIDES.flatMap((side) => {
    const wall = floor.room?.walls[side] ?? null;
    const share = towards(side, unit);
    return wall === null || share < 1e-9 ? [] : [Math.max(0.1, Math.max(wall - TRIPOD, wall / 4) / share)];
  });
  const farthest = Math.min(FARTHEST, ...walls.map((value) => Math.floor(value * 1000) / 1000));
  const detail = size === "insert" ? edgeOf(floor.person, bearing) + CLEAR : edgeOf(floor.subject, bearing) + CLEAR;
  return [Math.min(Math.ceil(detail * 1000) / 1000, farthest), farthest];
}

/** Distances at which a size is framed as named, on this bearing. */
function framed(setup: FilmingSetup, angle: Angle, size: ShotSize, bearing: number): number[] {
  const sizes = size === "insert" ? (["insert"] as const) : SHOT_SIZES.filter((each) => each !== "insert");
  return sizes.map((each) => millimetre(standFor({ ...setup, angle, size: each }).distance + detailAt(setup, each, bearing)));
}

const nearest = (values: readonly number[], to: number): number | undefined =>
  [...values].sort((a, b) => Math.abs(a - to) - Math.abs(b - to) || a - b)[0];

/**
 * Where a mark comes to rest when it is dropped on a spot: on a bearing of 15-degree steps or its angle's own, at a distance that frames
 * a size as named when one is within 0.2 m, else at half walking steps; inside the walls and clear of the movement.
 * Snapping what is snapped changes nothing.
 */
export function snapped(floor: BlockFloor, markKey: string, spot: Spot): Snapped {
  const { angle, size } = viewOf(floor, markKey);
  const dropped = polarOf([Number.isFinite(spot[0]) ? spot[0] : 0, Number.isFinite(spot[1]) ? spot[1] : 0]);
  const raw = millimetre(dropped.distance);
  const turns = [...Array.from({ length: 360 / TURN }, (_, index) => turned(index * TURN)), turned(homeBearing(angle)), turned(-homeBearing(angle))];
  const bearing = turns.sort((a, b) => between(a, dropped.bearing) - between(b, dropped.bearing) || Math.abs(a) - Math.abs(b))[0] ?? 0;

  const [least, most] = range(floor, size, bearing);
  const within = (value: number): boolean => value >= least && value <= most;
  const half = STEP_METRES / 2;
  const exact = framed(floor.setup, angle, size, bearing).filter(within);
  const close = nearest(exact, raw);
  // Steps that would go on to a framed distance are no places to rest.
  const steps = [-2, -1, 0, 1, 2].map((step) => Math.round(raw / half) + step).concat(Math.ceil(least / half), Math.floor(most / half))
    .map((count) => millimetre(count * half)).filter((value) => within(value) && exact.every((each) => Math.abs(each - value) > NEAR));
  const distance = (close !== undefined && Math.abs(close - raw) <= NEAR ? close : undefined) ?? nearest([...steps, ...exact], raw) ?? most;

  const away = Math.max(0.1, distance - detailAt(floor.setup, size, bearing));
  return { bearing, distance, shows: frameAt(floor.setup, angle, size, away).shows, stand: standAt(floor.setup, { angle, size }, away) };
}
