import type { FloorSide } from "../../episode";
import { spotAt, type Spot } from "../bearings";
import { bodiesOf, type FilmingSetup } from "../stand";
import type { Extent } from "./types";

/** Half a tripod's feet; how far behind the phone its operator stands, and half of them. Metres. Common practice, no source. */
export const TRIPOD = 0.3;
const BEHIND = 0.6;
const OPERATOR = 0.25;

/** Where each side lies, degrees from ahead towards the left. */
export const SIDE_BEARINGS: Readonly<Record<FloorSide, number>> = { ahead: 0, behind: 180, left: 90, right: -90 };

/** How far a spot lies towards a side, metres; negative for away from it. */
export function towards(side: FloorSide, [right, ahead]: Spot): number {
  return { ahead, behind: -ahead, left: -right, right }[side];
}

/** The whole movement on the floor. */
export function subjectExtent(setup: FilmingSetup): Extent {
  const { body } = bodiesOf(setup);
  return { halfWide: body.broad / 2, halfLong: (body.long + body.travel) / 2 };
}

/** A person from above: head and shoulders, or a body along. Common practice, no source. */
export function personExtent(setup: FilmingSetup): Extent {
  const { person } = bodiesOf(setup);
  return person.long > person.tall ? { halfWide: 0.28, halfLong: 0.85 } : { halfWide: 0.3, halfLong: 0.3 };
}

/** From the middle of an extent to its edge along a bearing, metres. */
export function edgeOf({ halfWide, halfLong }: Extent, bearing: number): number {
  const [right, ahead] = spotAt(bearing, 1).map(Math.abs) as [number, number];
  return Math.min(right > 1e-9 ? halfWide / right : Infinity, ahead > 1e-9 ? halfLong / ahead : Infinity);
}

/** What a mark takes of the room towards a side: the feet of the tripod, and the person behind it. Metres from the middle of the subject. */
export function roomOf(side: FloorSide, bearing: number, distance: number): number {
  return Math.max(towards(side, spotAt(bearing, distance)) + TRIPOD, towards(side, spotAt(bearing, distance + BEHIND)) + OPERATOR);
}
