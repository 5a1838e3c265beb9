import type { Episode } from "../episode";

/** Landscape, portrait, or both cut from one recording. */
export type Aspect = Episode["video"]["aspect"];

/** Focal lengths of the usual phone lenses, in millimetres as on a 36 x 24 mm frame. Common practice, no source. */
export const LENSES = { "ultra-wide": 13, main: 26, tele: 77 } as const;
/** A phone's lens by name, or any 35 mm-equivalent focal length in millimetres. */
export type Lens = keyof typeof LENSES | number;

/** The part of a 36 mm wide frame that the video uses, in millimetres. */
export interface FrameSize {
  readonly wide: number;
  readonly tall: number;
}

const LANDSCAPE: FrameSize = { wide: 36, tall: 20.25 };

/**
 * The frame a video is cut from. Portrait turns the phone; "both" films once in landscape and keeps the subject inside the upright
 * strip in the middle, so that both versions can be cut from it.
 */
export const FRAMES: Readonly<Record<Aspect, FrameSize>> = {
  "16:9": LANDSCAPE,
  "9:16": { wide: LANDSCAPE.tall, tall: LANDSCAPE.wide },
  both: { wide: (LANDSCAPE.tall * 9) / 16, tall: LANDSCAPE.tall },
};

/**
 * Focal length in millimetres, 35 mm equivalent.
 * @throws {RangeError} for a number that is no focal length
 */
export function focalLength(lens: Lens): number {
  const millimetres = typeof lens === "number" ? lens : LENSES[lens];
  if (!(millimetres > 0) || !Number.isFinite(millimetres)) throw new RangeError(`A focal length is a positive number of millimetres; ${millimetres} is not.`);
  return millimetres;
}

/** Angle seen across a frame side, in degrees: 2 atan(side / 2f), the pinhole formula. Both in millimetres. */
export function angleOfView(sideMillimetres: number, focalMillimetres: number): number {
  return (2 * Math.atan(sideMillimetres / (2 * focalMillimetres)) * 180) / Math.PI;
}

/** How far away a thing of a certain size just fills a frame side. Metres, millimetres. */
export function distanceToFill(metres: number, sideMillimetres: number, focalMillimetres: number): number {
  return (focalMillimetres * metres) / sideMillimetres;
}
