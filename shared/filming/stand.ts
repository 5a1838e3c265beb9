import type { Angle, Exercise, Position } from "../exercises";
import { bodyOf, postureOf, USUAL_STATURE, type Body } from "./body";
import { homeBearing } from "./bearings";
import { distanceToFill, focalLength, FRAMES, type Aspect, type Lens } from "./lens";
import { levelAt, subjectOf, type Subject } from "./subject";
import type { ShotSize, Stand } from "./types";

/** What the camera and the person are like; the same for all marks of a block. */
export interface FilmingSetup {
  readonly aspect: Aspect;
  readonly lens: Lens;
  /** Metres. */
  readonly stature: number;
  readonly position: Position;
  /** What is done; left out, somebody is only in that position. */
  readonly exercise?: Exercise | undefined;
}

/** Landscape, the main lens, a standing person of usual stature. */
export const USUAL_SETUP: FilmingSetup = { aspect: "16:9", lens: "main", stature: USUAL_STATURE, position: "standing" };

/** A size and an angle as a shot names them; null is not named. */
export interface View {
  readonly size: ShotSize | null;
  readonly angle: Angle | null;
}

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

/** The box of the whole movement, and the person alone. */
export const bodiesOf = ({ exercise = undefined, position, stature }: FilmingSetup): { readonly body: Body; readonly person: Body } => ({
  body: bodyOf(exercise ?? null, position, stature), person: postureOf(exercise ?? null, position, stature),
});

/** What one view of a setup has to hold, and how. */
interface Framing {
  readonly angle: Angle;
  readonly size: ShotSize;
  readonly subject: Subject;
  /** Height of the frame that holds the subject with its margins, metres at the subject. */
  readonly frameTall: number;
  readonly footRoom: number;
  /** Somebody who walks is framed where the walk comes nearest: so far before the middle of it. Metres. */
  readonly nearer: number;
}

/** A shot that names no size is framed full, one that names no angle from the side. */
function framingOf(setup: FilmingSetup, view: View): Framing {
  const { stature, aspect } = setup;
  if (!(stature > 0) || !Number.isFinite(stature)) throw new RangeError(`Stature is a positive number of metres; ${stature} is not.`);
  const angle = view.angle ?? "side";
  const size = view.size ?? "full";
  const { body, person } = bodiesOf(setup);
  const detail = size === "close-up" || size === "insert";
  const subject = subjectOf(size, angle, body, person);
  const footRoom = size === "wide" || size === "full" ? FOOT_ROOM : 0;
  const frame = FRAMES[aspect];
  const tallNeeded = subject.tall / (1 - HEAD_ROOM - footRoom);
  const wideNeeded = subject.wide / (1 - 2 * SIDE_ROOM);
  return {
    angle, size, subject, footRoom,
    frameTall: Math.max(tallNeeded, (wideNeeded * frame.tall) / frame.wide),
    nearer: detail ? 0 : (body.travel / 2) * Math.abs(Math.cos((homeBearing(angle) * Math.PI) / 180)),
  };
}

/**
 * Height of the middle of the frame. A frame at least as tall as needed keeps its margins in proportion; a smaller one keeps the
 * head and its room, and cuts below; a detail stays in the middle.
 */
function middleOf({ subject, frameTall, footRoom, size }: Framing, tall: number): number {
  const whole = subject.bottom + subject.tall / 2 + ((HEAD_ROOM - footRoom) / 2) * tall;
  if (tall >= frameTall || size === "close-up" || size === "insert") return whole;
  return Math.max(whole, subject.bottom + subject.tall - (1 / 2 - HEAD_ROOM) * tall);
}

/** Height of the lens. A high or low detail is looked at from just above or below itself, a body from over the head or from the floor. */
function heightFor({ angle, size }: Framing, middle: number, distance: number, stature: number): number {
  const detail = size === "close-up" || size === "insert";
  // Thirty degrees down or up, or more where that is not yet over the head.
  const slope = distance * Math.tan(Math.PI / 6);
  if (angle === "high") return limited(Math.max(middle + slope, detail ? 0 : stature + ABOVE_HEAD), LOWEST, Math.min(HIGHEST, Math.max(LOWEST, middle + distance * Math.tan(STEEPEST))));
  if (angle === "low") return detail ? limited(middle - slope, LOWEST, HIGHEST) : Math.max(LOWEST, middle - distance * Math.tan(STEEPEST));
  return limited(middle, LOWEST, HIGHEST);
}

/** What the frame holds in the plane it is framed for, metres; its lower edge may lie under the floor. */
interface Seen {
  readonly wide: number;
  readonly tall: number;
  readonly bottom: number;
}

/** The camera at a distance along the floor from the framed plane: unrounded. */
function aimed(setup: FilmingSetup, framing: Framing, distance: number): { readonly height: number; readonly drop: number; readonly seen: Seen } {
  const frame = FRAMES[setup.aspect];
  const focal = focalLength(setup.lens);
  // The frame grows with the line of sight, and its middle moves with the frame: a few rounds settle both.
  let [middle, height, tall] = [0, 0, (distance * frame.tall) / focal];
  for (let round = 0; round < 8; round += 1) {
    middle = middleOf(framing, tall);
    height = heightFor(framing, middle, distance, setup.stature);
    tall = (Math.hypot(distance, middle - height) * frame.tall) / focal;
  }
  return { height, drop: middle - height, seen: { wide: (tall * frame.wide) / frame.tall, tall, bottom: middle - tall / 2 } };
}

/** Distance along the floor from the framed plane at which the frame just holds the subject, unrounded. */
function framedFrom(setup: FilmingSetup, framing: Framing): number {
  const sight = distanceToFill(framing.frameTall, FRAMES[setup.aspect].tall, focalLength(setup.lens));
  if (framing.angle !== "high" && framing.angle !== "low") return sight;
  // The line of sight grows with the distance, so halving the interval finds where it is long enough.
  let [near, far] = [0.05, Math.max(sight, 0.1)];
  for (let round = 0; round < 40; round += 1) {
    const middle = (near + far) / 2;
    if (aimed(setup, framing, middle).seen.tall < framing.frameTall) near = middle; else far = middle;
  }
  return far;
}

/** The same to the tenth, never nearer than it takes to keep the look under 45 degrees: a detail may hang higher than a tripod reaches. */
function tapedFrom(setup: FilmingSetup, framing: Framing): number {
  let near = Math.max(0.1, tenth(framedFrom(setup, framing)));
  // The middle of the frame rises a little with the distance, by less than a tenth of it.
  while (Math.abs(aimed(setup, framing, near).drop) > near + 1e-6) near = tenth(near + 0.1);
  return near;
}

function standOf(setup: FilmingSetup, framing: Framing, shown: number): Stand {
  const { height, drop } = aimed(setup, framing, Math.max(0.05, shown - framing.nearer));
  return {
    distance: shown,
    height: tenth(height),
    tilt: Math.round((Math.atan2(drop, Math.max(0.05, shown - framing.nearer)) * 180) / Math.PI) + 0,
    steps: Math.max(0.5, Math.round((shown / STEP_METRES) * 2) / 2),
    level: levelAt(height, setup.stature),
  };
}

/**
 * Where the camera stands so that a shot is framed as named, by the pinhole model.
 *
 * Front, three-quarter, side and rear marks are level with the middle of the frame. High and low ones look down or up at it, never
 * steeper than 45 degrees, from where the line of sight gives the picture its size.
 * The body is taken as flat, in the plane through its middle; a walk is framed where it comes nearest.
 * A shot that names no size is framed full, one that names no angle from the side.
 * @returns distance along the floor and height, metres to the tenth; tilt in whole degrees, down is negative; steps of 0.75 m to the half
 * @throws {RangeError} when stature or focal length is not a positive number
 */
export function standFor(shot: View & FilmingSetup): Stand {
  const framing = framingOf(shot, shot);
  return standOf(shot, framing, tenth(tapedFrom(shot, framing) + framing.nearer));
}

/** How the camera stands for a view when it is put at another distance: height and tilt follow. Metres along the floor from the middle of the subject. */
export function standAt(setup: FilmingSetup, view: View, distance: number): Stand {
  return standOf(setup, framingOf(setup, view), Math.max(0.1, distance));
}

/** What a view needs in frame, and what the frame holds from a distance. Metres. */
export function seenFrom(setup: FilmingSetup, view: View, distance: number): { readonly seen: Seen; readonly subject: Subject; readonly size: ShotSize; readonly angle: Angle } {
  const framing = framingOf(setup, view);
  return { seen: aimed(setup, framing, Math.max(0.05, distance - framing.nearer)).seen, subject: framing.subject, size: framing.size, angle: framing.angle };
}
