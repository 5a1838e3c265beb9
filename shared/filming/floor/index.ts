/** A station from above: where marks stand, what they show, what is in the way, and where a dragged mark comes to rest. */
export type { BlockFloor, Extent, FilmingLine, FloorMark, MirrorView, RoomNeeded } from "./types";
export { floorOf } from "./floor-of";
export { snapped, type Snapped } from "./snap";
export { frameAt, type FrameView } from "./shows";
export { floorMark, standOf } from "./placed";
export { bearingInWords, metres, SIDE_WORDS } from "./words";
