import type { Floor, FloorSide } from "../../episode";
import { between, spotAt, turned } from "../bearings";
import { angleOfView, focalLength, FRAMES } from "../lens";
import type { FilmingSetup } from "../stand";
import { SIDE_BEARINGS, towards, TRIPOD } from "./extent";
import type { MirrorView } from "./types";

/** Where nobody measured: how far a mirror is taken to be, and how far a wall runs on. Metres. */
const UNMEASURED = { mirror: 3, wall: 10 } as const;
const STEP = 15;

const degrees = (radians: number): number => (radians * 180) / Math.PI;
/** Half of what the frame holds from left to right; for "both" the landscape recording, which is what is filmed. */
const halfView = ({ aspect, lens }: FilmingSetup): number => angleOfView((aspect === "both" ? FRAMES["16:9"] : FRAMES[aspect]).wide, focalLength(lens)) / 2;

/** How far a mirror's frame reaches to the left and the right of one who looks at it. */
const ENDS: Readonly<Record<FloorSide, readonly [left: FloorSide, right: FloorSide]>> = {
  ahead: ["left", "right"], right: ["ahead", "behind"], behind: ["right", "left"], left: ["behind", "ahead"],
};

/**
 * What a mirror shows of a camera that looks at the subject: whether it is in the frame at all, and whether the camera's own image
 * is. The image of the camera lies straight through the mirror, as far behind it as the camera is in front.
 */
function inMirror(room: Floor, setup: FilmingSetup, side: FloorSide, bearing: number, distance: number): "camera" | "room" | null {
  const spot = spotAt(bearing, distance);
  const gap = (room.walls[side] ?? UNMEASURED.mirror) - towards(side, spot);
  if (gap <= 0) return null;
  const half = halfView(setup);
  const turn = turned(bearing + 180 - SIDE_BEARINGS[side]);
  const [left, right] = ENDS[side];
  const reach = (end: FloorSide): number => degrees(Math.atan2(Math.max(0, (room.walls[end] ?? UNMEASURED.wall) - towards(end, spot)), gap));
  if (turn + half <= -reach(right) || turn - half >= reach(left)) return null;
  const tripod = degrees(Math.atan2(TRIPOD, 2 * gap));
  return Math.abs(turn) < half + tripod ? "camera" : "room";
}

const showsCamera = (room: Floor, setup: FilmingSetup, bearing: number, distance: number): boolean =>
  room.mirrors.some((side) => inMirror(room, setup, side, bearing, distance) === "camera");

/** The nearest bearing, in steps of 15 degrees, from where no mirror shows the camera. */
function safeFrom(room: Floor, setup: FilmingSetup, bearing: number, distance: number): number | null {
  const steps = Array.from({ length: 360 / STEP }, (_, index) => turned(index * STEP));
  const safe = steps.filter((each) => !showsCamera(room, setup, each, distance)).sort((a, b) => between(a, bearing) - between(b, bearing) || b - a);
  return safe[0] ?? null;
}

/** What each mirror of a room shows in the frame of a mark. */
export function mirrorsSeen(room: Floor | null, setup: FilmingSetup, bearing: number, distance: number): MirrorView[] {
  if (!room) return [];
  return [...new Set(room.mirrors)].flatMap((side): MirrorView[] => {
    const seen = inMirror(room, setup, side, bearing, distance);
    if (!seen) return [];
    const camera = seen === "camera";
    return [{ side, showsCamera: camera, safeBearing: camera ? safeFrom(room, setup, bearing, distance) : null }];
  });
}
