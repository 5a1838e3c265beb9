import type { Angle, Position } from "../exercises";
import { distanceToFill, focalLength, FRAMES, type Aspect, type Lens } from "./lens";
import { levelAt, subjectOf, USUAL_STATURE } from "./subject";
import type { ShotSize, Stand } from "./types";

/** What the camera and the person are like; the same for all marks of a block. */
export interface FilmingSetup {
  readonly aspect: Aspect;
  readonly lens: Lens;
  /** Metres. */
  readonly stature: number;
  readonly position: Position;
}

/** Landscape, the main lens, a standing person of usual stature. */
export const USUAL_SETUP: FilmingSetup = { aspect: "16:9", lens: "main", stature: USUAL_STATURE, position: "standing" };

/** Shares of the frame left free above the subject, below the feet, and at each side. Head-room 10 %; common practice, no source. */
const HEAD_ROOM = 0.1;
const FOOT_ROOM = 0.05;
const SIDE_ROOM = 0.05;

/** How low and high a phone is put; how far above the top of the head a high mark is wanted; metres. Common practice, no source. */
const LOWEST = 0.2;
const HIGHEST = 2.2;
const ABOVE_HEAD = 0.2;
/** Steepest look up or down; steeper, and the body is too foreshortened to teach from. Common practice, no source. */
const STEEPEST = Math.PI / 4;
/** A walking step, in metres. Common practice, no source. */
export const STEP_METRES = 0.75;

const tenth = (metres: number): number => Math.round(metres * 10) / 10;
const limited = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** Height of the lens. A high or low detail is looked at from just above or below itself, a body from over the head or from the floor. */
function heightFor(angle: Angle, size: ShotSize, middle: number, sight: number, stature: number): number {
  const detail = size === "close-up" || size === "insert";
  if (angle === "high") return limited(Math.max(middle + sight / 2, detail ? 0 : stature + ABOVE_HEAD), LOWEST, HIGHEST);
  if (angle === "low") return detail ? limited(middle - sight / 2, LOWEST, HIGHEST) : LOWEST;
  return limited(middle, LOWEST, HIGHEST);
}

/**
 * Where the camera stands so that a shot is framed as named, by the pinhole model.
 *
 * Front, three-quarter, side and rear marks are level with the middle of the frame. High and low ones look down or up at it along the
 * same line of sight, so the picture keeps its size; where that would be steeper than 45 degrees they stand back.
 * A shot that names no size is framed full, one that names no angle from the side.
 * @returns distance along the floor and height, metres to the tenth; tilt in whole degrees, down is negative; steps of 0.75 m to the half
 * @throws {RangeError} when stature or focal length is not a positive number
 */
export function standFor(shot: { readonly size: ShotSize | null; readonly angle: Angle | null } & FilmingSetup): Stand {
  const { stature } = shot;
  if (!(stature > 0) || !Number.isFinite(stature)) throw new RangeError(`Stature is a positive number of metres; ${stature} is not.`);
  const angle = shot.angle ?? "side";
  const size = shot.size ?? "full";
  const subject = subjectOf(size, angle, shot.position, stature);
  const frame = FRAMES[shot.aspect];

  const footRoom = size === "wide" || size === "full" ? FOOT_ROOM : 0;
  const tallNeeded = subject.tall / (1 - HEAD_ROOM - footRoom);
  const wideNeeded = subject.wide / (1 - 2 * SIDE_ROOM);
  const frameTall = Math.max(tallNeeded, (wideNeeded * frame.tall) / frame.wide);
  const sight = distanceToFill(frameTall, frame.tall, focalLength(shot.lens));
  const middle = subject.bottom + subject.tall / 2 + ((HEAD_ROOM - footRoom) / 2) * frameTall;

  const height = heightFor(angle, size, middle, sight, stature);
  const drop = middle - height;
  const distance = Math.sqrt(Math.max(sight, Math.abs(drop) / Math.sin(STEEPEST)) ** 2 - drop ** 2);
  const shown = Math.max(0.1, tenth(distance));
  return {
    distance: shown,
    height: tenth(height),
    tilt: Math.round((Math.atan2(drop, distance) * 180) / Math.PI) + 0,
    steps: Math.max(0.5, Math.round((shown / STEP_METRES) * 2) / 2),
    level: levelAt(height, stature),
  };
}
