import type { Angle, Position } from "../exercises";
import type { ShotSize } from "./types";

/** Room a body takes in a position, for a stature of 1.75 m; metres. Arms and a weight in the hands included. */
interface Room {
  readonly tall: number;
  /** Across, as seen from the front or the rear. */
  readonly broad: number;
  /** Along, as seen from the side. */
  readonly long: number;
}

/** Metres. Common practice, no source. */
export const USUAL_STATURE = 1.75;

/** Common practice, no source. */
const ROOM: Readonly<Record<Position, Room>> = {
  standing: { tall: 1.75, broad: 1, long: 1 },
  walking: { tall: 1.75, broad: 1, long: 2 },
  seated: { tall: 1.35, broad: 1, long: 1.2 },
  kneeling: { tall: 1.3, broad: 0.9, long: 1 },
  "half-kneeling": { tall: 1.3, broad: 0.9, long: 1.2 },
  hanging: { tall: 2.4, broad: 1, long: 1 },
  "lying face up": { tall: 0.8, broad: 1, long: 2 },
  "lying face down": { tall: 0.8, broad: 1, long: 2 },
  "side-lying": { tall: 0.7, broad: 0.8, long: 2 },
  "all fours": { tall: 0.8, broad: 0.8, long: 1.4 },
  plank: { tall: 0.6, broad: 0.8, long: 2 },
};

/** What has to be in frame: its size, and the height of its lower edge above the floor. Metres. */
export interface Subject {
  readonly wide: number;
  readonly tall: number;
  readonly bottom: number;
}

/** How much of the body each size shows. Common practice, no source. */
const WIDE_ROOM = 1.6;
const MEDIUM_SHARE = 0.5;
/** A head or one working joint with what moves around it; a hand, a foot, a handle. Metres. */
const CLOSE_UP = 0.45;
const INSERT_METRES = 0.3;

const acrossOf = (room: Room, angle: Angle): number => {
  if (angle === "side") return room.long;
  return angle === "three-quarter" || angle === "high" ? Math.max(room.broad, room.long * Math.SQRT1_2) : room.broad;
};

/** The part of the body a shot shows. @param stature - metres */
export function subjectOf(size: ShotSize, angle: Angle, position: Position, stature: number): Subject {
  const scale = stature / USUAL_STATURE;
  const room = ROOM[position];
  const [tall, across] = [room.tall * scale, acrossOf(room, angle) * scale];
  const lies = room.long > room.tall;
  if (size === "insert") return { wide: INSERT_METRES, tall: INSERT_METRES, bottom: Math.max(0, tall / 2 - INSERT_METRES / 2) };
  if (size === "close-up") return { wide: CLOSE_UP, tall: CLOSE_UP, bottom: Math.max(0, tall - CLOSE_UP) };
  if (size === "medium") {
    return lies && position !== "walking"
      ? { wide: Math.max(across * MEDIUM_SHARE, CLOSE_UP), tall, bottom: 0 }
      : { wide: Math.min(across, room.broad * scale), tall: tall * MEDIUM_SHARE, bottom: tall * (1 - MEDIUM_SHARE) };
  }
  return size === "full" ? { wide: across, tall, bottom: 0 } : { wide: across * WIDE_ROOM, tall: tall * WIDE_ROOM, bottom: (tall * (1 - WIDE_ROOM)) / 2 };
}

/** Heights of body parts as shares of stature. @source Drillis & Contini 1966, segment lengths (from memory) */
const PARTS: readonly (readonly [number, string])[] = [
  [0, "floor"], [0.039, "ankle"], [0.16, "shin"], [0.285, "knee"], [0.41, "thigh"], [0.53, "hip"], [0.63, "elbow"], [0.72, "chest"],
  [0.818, "shoulder"], [0.87, "chin"], [0.936, "eyes"], [1, "top of the head"],
];

/** The part of a standing body nearest to a height: what a coach holds the tripod head against. Metres. */
export function levelAt(height: number, stature: number): string {
  if (height > stature + 0.1) return "above the head";
  const share = height / stature;
  return PARTS.reduce((best, part) => (Math.abs(part[0] - share) < Math.abs(best[0] - share) ? part : best))[1];
}
