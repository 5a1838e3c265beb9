import type { Floor, FloorSide } from "../../episode";
import type { Angle, Position } from "../../exercises";
import type { Spot } from "../bearings";
import type { FilmingSetup } from "../stand";
import type { ShotSize, Stand } from "../types";

/** Half of what the subject takes of the floor, metres: across it, and along the way it faces. */
export interface Extent {
  readonly halfWide: number;
  readonly halfLong: number;
}

/** What a mirror in the frame of a mark shows. */
export interface MirrorView {
  readonly side: FloorSide;
  /** The camera itself and whoever stands behind it, not only the room. */
  readonly showsCamera: boolean;
  /** The nearest bearing at the same distance from where no mirror shows the camera; null when there is none. Degrees. */
  readonly safeBearing: number | null;
}

/** A mark with its place on the floor. Metres; degrees from ahead, towards the left positive, more than -180 and at most 180. */
export interface FloorMark {
  readonly letter: string;
  /** As filming names it: the `markKey` of its shots. */
  readonly mark: string;
  /** What the shots name, or what is taken when they name none. */
  readonly angle: Angle;
  readonly size: ShotSize;
  readonly bearing: number;
  /** Along the floor from the middle of the subject. An insert's `stand.distance` counts from the detail instead. */
  readonly distance: number;
  /** Metres to the subject's right, and ahead of it. */
  readonly spot: Spot;
  readonly stand: Stand;
  /** The coach put it here. */
  readonly isMoved: boolean;
  /** What the frame holds at the subject's distance, metres. */
  readonly frame: { readonly wide: number; readonly tall: number };
  /** "head to toe with 0.2 m above" */
  readonly shows: string;
  readonly mirrors: readonly MirrorView[];
  /** Whole sentences that name the mark. */
  readonly problems: readonly string[];
}

/** The line along which the subject faces, lies or moves; cameras that stay on one side of it keep left and right in every cut. */
export interface FilmingLine {
  readonly along: "faces" | "lies" | "walks";
  /** On which of the subject's sides the cameras stand. */
  readonly side: "left" | "right";
  /** Letters of the marks on the other side. */
  readonly crossing: readonly string[];
}

/** Metres needed from the middle of the subject to each side. */
export type RoomNeeded = Readonly<Record<FloorSide, number>>;

/** A station from above. */
export interface BlockFloor {
  /** Empty when neither the block nor its exercise names one. */
  readonly station: string;
  /** The station's room; null when nobody measured it. */
  readonly room: Floor | null;
  readonly position: Position;
  readonly setup: FilmingSetup;
  /** The whole movement with equipment: nothing stands inside. */
  readonly subject: Extent;
  /** The person alone, as a plan draws it. */
  readonly person: Extent;
  readonly marks: readonly FloorMark[];
  readonly line: FilmingLine;
  /** The least room for all marks, with the tripod and a person behind each. */
  readonly smallestRoom: RoomNeeded;
  /** Whole sentences: of the marks in their order, then of the station. */
  readonly problems: readonly string[];
}
