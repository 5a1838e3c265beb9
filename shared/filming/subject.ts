import type { Angle } from "../exercises";
import { homeBearing } from "./bearings";
import type { Body } from "./body";
import type { ShotSize } from "./types";

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

/** How broad a body looks from a bearing, as an upright ellipse of its breadth and length. Metres, degrees. */
export function acrossFrom({ broad, long, travel }: Body, bearing: number): number {
  const radians = (bearing * Math.PI) / 180;
  return Math.hypot(broad * Math.cos(radians), (long + travel) * Math.sin(radians));
}

/**
 * The part of the body a shot shows.
 * @param body - the whole movement, equipment included
 * @param posture - the person alone: a waist-up shot does not hold the ends of a bar
 */
export function subjectOf(size: ShotSize, angle: Angle, body: Body, posture: Body): Subject {
  const across = acrossFrom(body, homeBearing(angle));
  if (size === "insert") return { wide: INSERT_METRES, tall: INSERT_METRES, bottom: Math.max(0, posture.tall / 2 - INSERT_METRES / 2) };
  if (size === "close-up") return { wide: CLOSE_UP, tall: CLOSE_UP, bottom: Math.max(0, posture.tall - CLOSE_UP) };
  if (size === "medium") {
    return posture.long > posture.tall
      ? { wide: Math.max(across * MEDIUM_SHARE, CLOSE_UP), tall: body.tall, bottom: 0 }
      : { wide: Math.min(across, posture.broad), tall: body.tall - posture.tall * (1 - MEDIUM_SHARE), bottom: posture.tall * (1 - MEDIUM_SHARE) };
  }
  if (size === "full") return { wide: across, tall: body.tall, bottom: 0 };
  return { wide: across * WIDE_ROOM, tall: body.tall * WIDE_ROOM, bottom: (body.tall * (1 - WIDE_ROOM)) / 2 };
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
