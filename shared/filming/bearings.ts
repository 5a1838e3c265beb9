import type { Angle } from "../exercises";

/**
 * Degrees from the way the subject faces (or its head points), counted towards its left: where a camera of each angle stands when
 * nobody moved it. All on one side of the line the subject faces along, so that left and right stay as they are in every cut.
 * Three-quarter, side and rear by name; high and low between them, where no other mark stands. Common practice, no source.
 */
const HOME: Readonly<Record<Angle, number>> = { front: 0, "three-quarter": 45, side: 90, rear: 180, high: 22, low: 68, insert: 60 };

/** Where a camera of an angle stands when nobody moved it. Degrees from ahead, towards the left. */
export const homeBearing = (angle: Angle): number => HOME[angle];

/** The same direction as more than -180 and at most 180 degrees. */
export function turned(degrees: number): number {
  const within = ((degrees % 360) + 360) % 360;
  return within > 180 ? within - 360 : within;
}

/** Degrees between two directions, 0 to 180. */
export const between = (a: number, b: number): number => Math.abs(turned(a - b));

/** A place on the floor: metres to the right of the subject and ahead of it. */
export type Spot = readonly [right: number, ahead: number];

/** The spot a bearing and a distance lead to. */
export function spotAt(bearing: number, distance: number): Spot {
  const radians = (bearing * Math.PI) / 180;
  // Adding zero turns a negative zero into a plain one.
  return [-Math.sin(radians) * distance + 0, Math.cos(radians) * distance + 0];
}

/** The bearing and distance of a spot; straight ahead for the subject's own place. */
export function polarOf([right, ahead]: Spot): { readonly bearing: number; readonly distance: number } {
  const distance = Math.hypot(right, ahead);
  return { bearing: distance === 0 ? 0 : turned((Math.atan2(-right, ahead) * 180) / Math.PI), distance };
}
